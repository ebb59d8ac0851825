/** The parts of a job in the order of the work, and what each is for. */
export const parts = [
  { id: "lift", title: "Lift", says: "what its maker asks of the floor" },
  { id: "floor", title: "Floor", says: "the concrete that is there or is to be poured, and how well it is known" },
  { id: "position", title: "Position", says: "where the columns are wanted, and where they may stand" },
  { id: "answer", title: "Will it carry?", says: "the maker's page, line by line, and the margin" },
  { id: "pad", title: "Pad", says: "the cheapest concrete that would carry it" },
  { id: "pour", title: "Pour", says: "what to order, where to saw, when to drill" },
  { id: "anchors", title: "Anchors", says: "set-out, shims, and what to do when the drill meets steel" },
  { id: "upkeep", title: "Upkeep", says: "rounds of the nuts, cracks, and the vehicle of today" },
  { id: "papers", title: "Papers", says: "the sheets that travel, to print and to send" },
] as const;

export type PartId = (typeof parts)[number]["id"];
