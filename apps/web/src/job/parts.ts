/** The parts of a job in the order of the work. */
export const parts = [
  { id: "lift", title: "Lift", says: "what its maker asks of the floor" },
  { id: "floor", title: "Floor", says: "what is there, or is to be poured" },
  { id: "position", title: "Position", says: "where the columns stand in the bay" },
  { id: "answer", title: "Will it carry?", says: "the maker's page, and the margin" },
  { id: "pad", title: "Pad", says: "what would have to be poured under the columns" },
  { id: "pour", title: "Pour", says: "joints, order, cure, drilling day" },
  { id: "anchors", title: "Anchors", says: "set-out, shims, when the drill meets steel" },
  { id: "upkeep", title: "Upkeep", says: "torque rounds, cracks, vehicles" },
  { id: "papers", title: "Papers", says: "the sheets that travel" },
] as const;

export type PartId = (typeof parts)[number]["id"];
