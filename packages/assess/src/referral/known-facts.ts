import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { tapeWords } from "../survey/index.ts";
import { choiceFact, quantityFact, saidFact } from "./fact-words.ts";
import type { KnownFact } from "./referral-pack.ts";

export const siteFacts = ({ customer, place, date, setting, bay }: Job): readonly KnownFact[] => [
  saidFact("Customer", customer),
  saidFact("Address", place),
  saidFact("Looked at on", date),
  choiceFact("Use", setting.use),
  choiceFact("Permit", setting.permit),
  choiceFact("Seismic design category", setting.seismic),
  choiceFact("Weather", setting.weather),
  choiceFact("Slope or retaining wall near", setting.slopeNear),
  choiceFact("Slab's owner", setting.slabOwner),
  quantityFact("Ceiling", bay.ceiling),
];

export const floorFacts = ({ floor }: Job): readonly KnownFact[] => {
  const { strength, ground } = floor;
  const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
  return [
    choiceFact("Floor", floor.kind),
    choiceFact("Below it", floor.below),
    choiceFact("Post-tension", floor.postTension),
    choiceFact("Heating in the slab", floor.heat),
    choiceFact("Pipes and conduits", floor.utilities),
    choiceFact("Movement of the ground", floor.movement),
    quantityFact("Thickness named", floor.thickness),
    ...floor.zones.map(({ name, thickness, state }) =>
      quantityFact(`${name}${state === "proposed" ? " (planned)" : ""}, thickness`, thickness),
    ),
    choiceFact("Layer over it", floor.layer),
    choiceFact("Surface", floor.surface),
    quantityFact("Strength specified", strength.specified),
    choiceFact("Delivery tickets", strength.tickets),
    ...strength.cylinders.map(({ strength: found, ageDays }) => quantityFact(`Cylinder at ${ageDays} days`, found)),
    ...strength.cores.map(({ strength: found }) => quantityFact("Core", found)),
    saidFact("Poured", floor.poured),
    choiceFact("Reinforcement", floor.reinforcement),
    ...floor.bars.map(({ size, spacing }) => quantityFact(`Bars ${size}, spacing`, spacing)),
    choiceFact("Soil", ground.soil),
    choiceFact("Ground water", ground.wet),
    choiceFact("Base course", ground.base),
    choiceFact("Foam", ground.foam),
    choiceFact("Hollows", ground.voids),
    {
      what: "Joints and cracks",
      value: `${count(floor.joints.length, "joint", "joints")}, ${count(floor.cracks.length, "crack", "cracks")} on the plan`,
      basis: "as drawn",
    },
    ...floor.cracks.map(({ name, width }) => quantityFact(`${name || "Crack"}, width`, width)),
    ...floor.pipes.map(({ name, kind, depth }) => quantityFact(`${name || kind}, depth`, depth)),
    ...(floor.slope.known ? [quantityFact("Slope", floor.slope)] : []),
  ];
};

export const readingFacts = ({ floor, units }: Job): readonly KnownFact[] =>
  floor.readings.map(({ at, near, thickness, method, end, place, under, note }, i) => ({
    what: `Reading ${i + 1}, ${at ? `${tapeWords(at.x, units)} from left, ${tapeWords(at.y, units)} from back` : (near ?? "place not noted")}`,
    value: `${thickness.known ? thickness.written : "no figure"}, ${end.replaceAll("-", " ")}${place === "thickened-edge" ? ", at a thickened edge" : ""}`,
    basis: [
      method.replaceAll("-", " "),
      under.known ? `${under.value.replaceAll("-", " ")} under it` : "",
      thickness.known && thickness.basis.kind !== "measured" ? basisWords(thickness.basis) : "",
      note ?? "",
    ]
      .filter((word) => word !== "")
      .join("; "),
  }));

export const liftFacts = ({ lift }: Job): readonly KnownFact[] => [
  {
    what: "Lift",
    value: `${lift.name}, ${lift.kind.replaceAll("-", " ")}`,
    basis: lift.edition ?? "edition not known",
  },
  choiceFact("Maker's manual", lift.manual),
  choiceFact("Top", lift.top),
  choiceFact("Arms", lift.arms),
  quantityFact("Rated load", lift.rated),
  quantityFact("Weight of one column", lift.columnWeight),
  quantityFact("Column spacing", lift.spacing),
  ...(lift.top.known && lift.top.value === "free-standing" ? [] : [quantityFact("Height of the beam", lift.tieHeight)]),
  quantityFact("Carriage at pick-up", lift.pickupHeight),
  quantityFact("Carriage at full rise", lift.fullHeight),
  quantityFact("Reach, car pads", lift.reachCar),
  quantityFact("Reach, frame-truck pads", lift.reachTruck),
  quantityFact("Base plate thickness", lift.base.thickness),
  quantityFact("Maker asks: thickness", lift.asks.thickness),
  quantityFact("Maker asks: strength", lift.asks.strength),
  quantityFact("Maker asks: to an edge", lift.asks.edge),
  quantityFact("Maker asks: days", lift.asks.days),
];

export const anchorFacts = ({ lift }: Job): readonly KnownFact[] => {
  const { product, holes, torque } = lift.anchors;
  return [
    {
      what: "Anchors of one base",
      value: holes.length > 0 ? `${holes.length}, as drawn` : "hole pattern not known",
      basis: holes.length > 0 ? "the lift's sheet" : "",
    },
    choiceFact("Anchor's sheet", product.sheet),
    choiceFact("Kind", product.kind),
    quantityFact("Diameter", product.diameter),
    quantityFact("Nominal embedment", product.nominalEmbedment),
    quantityFact("Effective embedment", product.effectiveEmbedment),
    quantityFact("Hole depth", product.holeDepth),
    quantityFact("Least slab thickness", product.minimumThickness),
    quantityFact("Least edge distance", product.minimumEdge),
    quantityFact("Installation torque", torque),
  ];
};

export const vehicleFacts = ({ vehicles }: Job): readonly KnownFact[] =>
  vehicles.map(({ name, weight, frame }) => ({
    ...quantityFact(name, weight),
    ...(frame.known && weight.known ? { value: `${weight.written}, ${frame.value.replaceAll("-", " ")}` } : {}),
  }));
