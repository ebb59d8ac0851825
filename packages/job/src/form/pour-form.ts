import {
  choice,
  date,
  group,
  list,
  optionalGroup,
  plainNumber,
  plainNumberOrNone,
  quantity,
  required,
} from "../fields/index.ts";
import type { Pour } from "../job.ts";

const spell = group<Pour["temperatures"][number]>("a spell of days", "days of about the same temperature", {
  fromDay: required(plainNumber("time", "first day after the pour", 0)),
  toDay: plainNumberOrNone("time", "last day; the spell goes on when left out"),
  mean: required(quantity("temperature", "mean temperature of the concrete", { sign: "any" })),
});

export const pourForm = optionalGroup(
  group<Pour>("the pour", "the concrete to be poured, or just poured", {
    date: date("the day of the pour"),
    strength: quantity("stress", "compressive strength ordered"),
    slump: quantity("length", "slump ordered"),
    air: quantity("number", "air content ordered", { sign: "not-negative" }),
    cement: choice({ I: "ordinary", II: "moderate", III: "quick", blended: "with fly ash or slag" }, "type of cement"),
    fibre: quantity("dosage", "fibres in the mix", { sign: "not-negative" }),
    temperatures: list("temperature after the pour, spell by spell", spell, { most: 200 }),
    waste: quantity("number", "extra concrete to order, as a share", { sign: "not-negative" }),
  }),
);
