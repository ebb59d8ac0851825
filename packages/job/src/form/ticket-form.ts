import { type Field, group, quantity, required, text } from "../fields/index.ts";
import type { PourTicket } from "../job.ts";

export const ticketForm = group<PourTicket>(
  "a truck",
  "one truck as it came",
  {
    load: required(text("which truck, such as truck 1", 40)) as Field<string>,
    ticket: text("number of its ticket", 60),
    time: text("when it came, by the clock", 20),
    slump: quantity("length", "slump measured at the truck", { sign: "not-negative", usual: [0, 280] }),
    temperature: quantity("temperature", "temperature of the concrete at the truck", { sign: "any" }),
    water: text("water added on the place, how much; none where none was", 100),
    cylinders: text("cylinders cast of it, how many and how marked", 100),
    note: text("anything seen"),
  },
  { basis: (_, outer) => (outer.kind === "stated" ? { kind: "measured" } : outer) },
);
