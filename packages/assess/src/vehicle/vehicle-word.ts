/** yes: nothing here forbids it; retorque-first: a round of the nuts comes before; hold: something must be known first. */
export type VehicleWord = "yes" | "retorque-first" | "hold" | "no";
