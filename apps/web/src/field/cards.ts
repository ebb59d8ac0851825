/** The cards that go into the garage. `each`: every step is kept for itself; `round`: all of it is one visit. */
export const cards = [
  { id: "drill", title: "Drill card", says: "test holes: where, how deep, what was under it", keeps: "each" },
  { id: "pour", title: "Pour card", says: "trucks, cylinders, covers, the thermometer", keeps: "each" },
  { id: "installation", title: "Installation card", says: "hole by hole: depth, steel, clean, torque", keeps: "each" },
  { id: "torque", title: "Torque card", says: "a round of the nuts, in the cross order", keeps: "round" },
] as const;

export type Card = (typeof cards)[number];
export type CardId = Card["id"];

export const cardNamed = (id: string): Card | undefined => cards.find((card) => card.id === id);
