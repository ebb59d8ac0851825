import { assumed, defaults, type Job, type KnownQuantity, type Quantity, type Vehicle } from "@floorworthy/job";
import { liftedBy } from "./lifted-by.ts";

/** What is lifted, with the ends that hurt. N and mm. */
export interface VehicleFacts {
  readonly weight: KnownQuantity | undefined;
  /** the heavier axle; where no axle is known, three fifths of the weight */
  readonly heavierAxle: KnownQuantity | undefined;
  /** from - to, mm from the line of the columns, + toward the door */
  readonly offset: readonly [number, number];
  readonly offsetKnown: "known" | "assumed";
  readonly spacing: KnownQuantity;
  readonly spacingKnown: "known" | "assumed";
  readonly pads: readonly ("car" | "frame-truck")[];
  /** centre of gravity behind the front axle, mm */
  readonly behindFrontAxle: number | undefined;
  readonly assumed: readonly string[];
  /** what does not fit together */
  readonly contradictions: readonly string[];
}

/** axles that add up to the weight within this part of it agree */
const AGREE = 0.02;

export const vehicleFacts = (job: Job, vehicle: Vehicle): VehicleFacts => {
  const taken: string[] = [];
  const { frame, pickupSpacing, offset } = vehicle;
  const weight = weightOf(vehicle, taken);
  const pads = frame.known
    ? [frame.value === "unibody" ? ("car" as const) : ("frame-truck" as const)]
    : (["car", "frame-truck"] as const);
  const onPads = liftedBy(job.lift) === "pads";
  if (onPads && !frame.known)
    taken.push("where it is lifted, sills or frame rails: both are computed, the worse counts");
  const standIn = job.lift.padSpacing.known
    ? job.lift.padSpacing
    : assumed(pads.includes("frame-truck") ? defaults.padSpacingTruck : defaults.padSpacingCar);
  if (onPads && !pickupSpacing.known) taken.push(`distance between front and rear lifting points: ${standIn.written}`);
  const centre = offset?.known ? offset : assumed(defaults.centreOffset);
  if (onPads && !offset?.known)
    taken.push(
      `where its centre of gravity stands: up to ${defaults.centreOffset.value} in off the line of the columns, either way`,
    );
  if (!onPads && !vehicle.frontAxle.known && !vehicle.rearAxle.known)
    taken.push(`how it stands on its axles: ${UNEVEN.value} of its weight on one`);
  if (weight?.basis.kind === "assumed" && vehicle.weight.known)
    taken.push(`weight ${weight.written}: ${weight.basis.why}`);
  const ofClass = [
    vehicle.frontAxle.known && vehicle.frontAxle.basis.kind === "assumed" && "axles",
    vehicle.wheelbase.known && vehicle.wheelbase.basis.kind === "assumed" && "wheelbase",
    pickupSpacing.known && pickupSpacing.basis.kind === "assumed" && "lifting points",
    frame.known && frame.basis.kind === "assumed" && "where it is lifted",
  ].filter((words) => words !== false);
  if (ofClass.length > 0) taken.push(`${ofClass.join(", ")}: invented figures typical of the class`);
  return {
    weight,
    heavierAxle: weight && heavierAxleOf(vehicle, weight),
    offset: [centre.low, centre.high],
    offsetKnown: offset?.known ? "known" : "assumed",
    spacing: pickupSpacing.known ? pickupSpacing : standIn,
    spacingKnown: pickupSpacing.known ? "known" : "assumed",
    pads,
    behindFrontAxle: behindFrontAxle(vehicle, weight),
    assumed: taken,
    contradictions: contradictions(vehicle),
  };
};

const UNEVEN = assumed(defaults.unevenShare);

const scaled = (fact: KnownQuantity, by: number, written: string): KnownQuantity => ({
  ...fact,
  value: by * fact.value,
  low: by * fact.low,
  high: by * fact.high,
  written,
});

/** Of the whole weight: an axle nobody weighed is the rest, and axles that come to less than the weight share what is missing. */
const heavierAxleOf = ({ frontAxle, rearAxle }: Vehicle, weight: KnownQuantity): KnownQuantity => {
  if (frontAxle.known && rearAxle.known && frontAxle.high + rearAxle.high > 0) {
    const more = frontAxle.high > rearAxle.high ? frontAxle : rearAxle;
    return scaled(more, Math.max(1, weight.high / (frontAxle.high + rearAxle.high)), more.written);
  }
  const told = frontAxle.known ? frontAxle : rearAxle;
  if (!told.known) return scaled(weight, UNEVEN.value, `${UNEVEN.value} × ${weight.written}`);
  const rest: KnownQuantity = {
    ...weight,
    value: weight.value - told.value,
    low: Math.max(0, weight.low - told.high),
    high: weight.high - told.low,
    written: `${weight.written} less ${told.written}`,
  };
  return rest.high > told.high ? rest : told;
};

const bothAxles = ({ frontAxle, rearAxle }: Vehicle): number | undefined =>
  frontAxle.known && rearAxle.known ? frontAxle.value + rearAxle.value : undefined;

/** The weight as written, or its axles together; the heavier where they differ. */
const weightOf = (vehicle: Vehicle, taken: string[]): KnownQuantity | undefined => {
  const { weight, frontAxle, rearAxle } = vehicle;
  if (!frontAxle.known || !rearAxle.known) return weight.known ? weight : undefined;
  const axles: KnownQuantity = {
    ...frontAxle,
    value: frontAxle.value + rearAxle.value,
    low: frontAxle.low + rearAxle.low,
    high: frontAxle.high + rearAxle.high,
    written: `${frontAxle.written} + ${rearAxle.written}`,
  };
  if (!weight.known) {
    taken.push("weight: both axles together");
    return axles;
  }
  return axles.value > weight.value * (1 + AGREE) ? axles : weight;
};

const contradictions = (vehicle: Vehicle): string[] => {
  const { weight, frontAxle } = vehicle;
  const axles = bothAxles(vehicle);
  if (!weight.known) return [];
  if (frontAxle.known && axles === undefined && frontAxle.value > weight.high)
    return [`The front axle (${frontAxle.written}) weighs more than the whole vehicle (${weight.written}).`];
  return axles !== undefined && Math.abs(axles / weight.value - 1) > AGREE
    ? [`The axles do not add up to the weight (${weight.written}); the heavier counts.`]
    : [];
};

const behindFrontAxle = (
  { frontAxle, rearAxle, wheelbase }: Vehicle,
  weight: Quantity | undefined,
): number | undefined => {
  if (!wheelbase.known) return undefined;
  if (frontAxle.known && rearAxle.known && frontAxle.value + rearAxle.value > 0)
    return (wheelbase.value * rearAxle.value) / (frontAxle.value + rearAxle.value);
  if (weight?.known && frontAxle.known && frontAxle.value <= weight.value)
    return wheelbase.value * (1 - frontAxle.value / weight.value);
  return weight?.known && rearAxle.known && rearAxle.value <= weight.value
    ? (wheelbase.value * rearAxle.value) / weight.value
    : undefined;
};
