import { toBase, type Unit } from "@floorworthy/engine/quantities";
import { type KnownQuantity, unknown, type Vehicle } from "@floorworthy/job";

/** A class of vehicles. Every figure is invented, typical of the class, and stands in until the vehicle is weighed. */
interface VehicleClass {
  readonly words: string;
  /** lb, from - to */
  readonly weight: readonly [number, number];
  /** in */
  readonly wheelbase: number;
  /** of the weight on the front axle */
  readonly front: number;
  /** in, between front and rear lifting points */
  readonly pickups: readonly [number, number];
  readonly frame: "unibody" | "body-on-frame";
}

export const vehicleClasses = {
  "small-sports": {
    words: "small sports car",
    weight: [2200, 3000],
    wheelbase: 94,
    front: 0.5,
    pickups: [55, 65],
    frame: "unibody",
  },
  car: {
    words: "compact or middle-sized car",
    weight: [2800, 3600],
    wheelbase: 107,
    front: 0.6,
    pickups: [60, 72],
    frame: "unibody",
  },
  "rear-engine": {
    words: "car with its engine behind",
    weight: [2900, 3700],
    wheelbase: 94,
    front: 0.4,
    pickups: [55, 65],
    frame: "unibody",
  },
  crossover: {
    words: "crossover",
    weight: [3400, 4600],
    wheelbase: 110,
    front: 0.57,
    pickups: [65, 76],
    frame: "unibody",
  },
  pickup: {
    words: "light pickup on a frame",
    weight: [4500, 5900],
    wheelbase: 148,
    front: 0.58,
    pickups: [85, 115],
    frame: "body-on-frame",
  },
  "heavy-pickup": {
    words: "heavy pickup on a frame",
    weight: [6500, 8500],
    wheelbase: 168,
    front: 0.6,
    pickups: [95, 130],
    frame: "body-on-frame",
  },
  van: {
    words: "cargo van",
    weight: [4800, 6500],
    wheelbase: 150,
    front: 0.53,
    pickups: [90, 130],
    frame: "body-on-frame",
  },
  "electric-car": {
    words: "electric car",
    weight: [3700, 5300],
    wheelbase: 112,
    front: 0.49,
    pickups: [62, 78],
    frame: "unibody",
  },
  "electric-pickup": {
    words: "electric pickup",
    weight: [6500, 9200],
    wheelbase: 141,
    front: 0.5,
    pickups: [70, 95],
    frame: "body-on-frame",
  },
} as const satisfies Readonly<Record<string, VehicleClass>>;

export type VehicleClassName = keyof typeof vehicleClasses;

export const isVehicleClass = (name: string): name is VehicleClassName => Object.hasOwn(vehicleClasses, name);

const why = "invented figure typical of the class; weigh and measure the vehicle";

const span = (low: number, high: number, unit: Unit): KnownQuantity => ({
  known: true,
  value: toBase((low + high) / 2, unit),
  low: toBase(low, unit),
  high: toBase(high, unit),
  basis: { kind: "assumed", why },
  written: low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`,
});

/** A vehicle nobody has described: what is not known of it stays open. */
export const plainVehicle = (name: string): Vehicle => ({
  name,
  weight: unknown,
  frontAxle: unknown,
  rearAxle: unknown,
  wheelbase: unknown,
  length: unknown,
  width: unknown,
  height: unknown,
  noseToCentre: unknown,
  frame: unknown,
  pickupSpacing: unknown,
});

/** A vehicle of a class, every figure assumed. */
export const vehicleOfClass = (name: VehicleClassName): Vehicle => {
  const { words, weight, wheelbase, front, pickups, frame } = vehicleClasses[name] as VehicleClass;
  const [low, high] = weight;
  return {
    ...plainVehicle(words),
    weight: span(low, high, "lb"),
    frontAxle: span(front * low, front * high, "lb"),
    rearAxle: span((1 - front) * low, (1 - front) * high, "lb"),
    wheelbase: span(wheelbase, wheelbase, "in"),
    pickupSpacing: span(pickups[0], pickups[1], "in"),
    frame: { known: true, value: frame, basis: { kind: "assumed", why } },
  };
};
