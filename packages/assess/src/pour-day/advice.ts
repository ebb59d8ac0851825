/** What to do when the weather turns. Common practice of the trade, no source, unless said. */
export const whenRain: readonly string[] = [
  "Sheets and lath ready beside the forms before the truck comes; no pour into standing water.",
  "Rain before first set: cover, let it end, drag the water off; never work it in and never throw cement on it.",
  "Rain after first set does no harm but washes a soft face: cover and go on curing.",
  "A face that was washed or crusted under a base is ground flat and sounded before the lift is set on it.",
];

export const whenFrost: readonly string[] = [
  "No concrete on frozen ground, on frosted steel or against frosted forms: thaw with covers for a day, not with water.",
  "Frost ahead before the concrete has 500 psi (3.5 MPa): blankets on the same evening, edges and corners double, heat if they do not hold (ACI 306R, from memory).",
  "Frozen before that it is damaged for good: mark the place, do not drill, have it cored.",
  "Heaters are vented to the open: their gas makes a soft, dusting face and kills people.",
];
