import { isVehicleClass, plainVehicle, vehicleClasses, vehicleOfClass } from "@floorworthy/assess/vehicle";
import { type Dimension, readQuantity } from "@floorworthy/engine/quantities";
import type { Job, KnownQuantity, Vehicle } from "@floorworthy/job";

/** What a person may say of a vehicle on the command line. */
export interface VehicleOptions {
  readonly name?: string;
  readonly preset?: string;
  readonly weight?: string;
  readonly frontAxle?: string;
  readonly rearAxle?: string;
  readonly wheelbase?: string;
  readonly pickups?: string;
  readonly offset?: string;
  readonly frame?: string;
}

const quantities = {
  weight: { option: "--weight", key: "weight", dimension: "force", sign: "positive" },
  frontAxle: { option: "--front-axle", key: "frontAxle", dimension: "force", sign: "positive" },
  rearAxle: { option: "--rear-axle", key: "rearAxle", dimension: "force", sign: "positive" },
  wheelbase: { option: "--wheelbase", key: "wheelbase", dimension: "length", sign: "positive" },
  pickups: { option: "--pickups", key: "pickupSpacing", dimension: "length", sign: "positive" },
  offset: { option: "--offset", key: "offset", dimension: "length", sign: "any" },
} as const satisfies Partial<
  Record<keyof VehicleOptions, { option: string; key: keyof Vehicle; dimension: Dimension; sign: "any" | "positive" }>
>;

/** The vehicles asked for: the one described, the one named in the job, or all of the job's; or every mistake in the options. */
export const vehiclesOf = (
  job: Job,
  options: VehicleOptions,
): readonly Vehicle[] | { readonly mistakes: readonly string[] } => {
  const mistakes: string[] = [];
  const facts: Partial<Record<keyof Vehicle, unknown>> = {};
  for (const [name, { option, key, dimension, sign }] of Object.entries(quantities)) {
    const text = options[name as keyof typeof quantities];
    if (text === undefined) continue;
    const fact = quantityOf(option, text, dimension, sign, mistakes);
    if (fact) facts[key] = fact;
  }
  if (options.frame !== undefined) {
    if (options.frame === "unibody" || options.frame === "body-on-frame")
      facts.frame = { known: true, value: options.frame, basis: { kind: "stated" } };
    else mistakes.push(`--frame ${options.frame}: write unibody or body-on-frame.`);
  }
  const base = baseOf(job, options, Object.keys(facts).length > 0, mistakes);
  if (mistakes.length > 0) return { mistakes };
  return base.length === 1 && Object.keys(facts).length > 0 ? [described(base[0]!, facts)] : base;
};

/** A weight given in place of another makes the old axle weights meaningless, and the other way round. */
const described = (vehicle: Vehicle, facts: Partial<Record<keyof Vehicle, unknown>>): Vehicle => {
  const unknown = { known: false } as const;
  const axles = facts.weight && !facts.frontAxle && !facts.rearAxle ? { frontAxle: unknown, rearAxle: unknown } : {};
  const one =
    facts.weight && (facts.frontAxle === undefined) !== (facts.rearAxle === undefined)
      ? facts.frontAxle
        ? { rearAxle: unknown }
        : { frontAxle: unknown }
      : {};
  return { ...vehicle, ...axles, ...one, ...facts } as Vehicle;
};

const quantityOf = (
  option: string,
  text: string,
  dimension: Dimension,
  sign: "any" | "positive",
  mistakes: string[],
): KnownQuantity | undefined => {
  const read = readQuantity(text, dimension);
  if (!read.ok) {
    mistakes.push(`${option} ${read.message} ${read.hint}`);
    return undefined;
  }
  if (sign === "positive" && !(read.value > 0)) {
    mistakes.push(`${option} "${read.written}" must be more than zero.`);
    return undefined;
  }
  return {
    known: true,
    value: read.value,
    low: read.value,
    high: read.value,
    basis: { kind: "stated" },
    written: read.written,
  };
};

const baseOf = (
  job: Job,
  { name, preset }: VehicleOptions,
  described: boolean,
  mistakes: string[],
): readonly Vehicle[] => {
  if (preset !== undefined) {
    if (isVehicleClass(preset)) return [{ ...vehicleOfClass(preset), ...(name === undefined ? {} : { name }) }];
    mistakes.push(
      `--preset ${preset}: there is no such class. Write one of ${Object.keys(vehicleClasses).join(", ")}.`,
    );
    return [];
  }
  const found = job.vehicles.find((vehicle) => vehicle.name.toLowerCase() === name?.toLowerCase());
  if (found) return [found];
  if (described) return [plainVehicle(name ?? "the vehicle")];
  if (name !== undefined) {
    const names = job.vehicles.map((vehicle) => vehicle.name).join(", ");
    mistakes.push(
      `--name ${name}: the job names no such vehicle${names ? ` (it names ${names})` : ""}; give its --weight.`,
    );
    return [];
  }
  if (job.vehicles.length === 0)
    mistakes.push('The job names no vehicle: give --weight, such as --weight "8200 lb", or a --preset.');
  return job.vehicles;
};
