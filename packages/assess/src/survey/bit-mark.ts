import { type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import { assumed, type Default, type Job, thicknessAllowance } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { term, unitFor } from "../facts/print.ts";
import { drillPractice } from "./practice.ts";

/**
 * `m`: where the bit is marked, from its tip: as deep as the thickest concrete that is asked for, and enough below it to
 * hook the underside. Flush and still in concrete, the slab is thick enough; dropped before the mark, it is measured.
 * m = max(t_lift, t_anchor) + a + s, rounded up to 1/4 in (5 mm). Common practice, no source.
 */
export const bitMark = (job: Job): Term | Unable => {
  const { lift, units } = job;
  const asked = [
    { symbol: "t_lift", words: "least thickness on the lift maker's page", fact: lift.asks.thickness },
    {
      symbol: "t_anchor",
      words: "least thickness on the anchor's sheet",
      fact: lift.anchors.product.minimumThickness,
    },
  ].flatMap(({ symbol, words, fact }) =>
    fact.known ? [term(symbol, words, fact.high, "length", units, { basis: basisWords(fact.basis) })] : [],
  );
  if (asked.length === 0)
    return unable(
      "bit mark",
      "The maker's least thickness is not in the file: take it from the floor page of the lift's manual (lift.asks.thickness).",
    );
  const allowance = ofPractice("a", "what a hooked reading may overstate", thicknessAllowance.drill, job);
  const underside = ofPractice("s", "to see below the slab", drillPractice.underside, job);
  const unit = unitFor("length", units);
  const step = unit === "in" ? 1 / 4 : 5;
  const sum = Math.max(...asked.map(({ value }) => value)) + allowance.value + underside.value;
  const value = Math.ceil(sum / step - 1e-9) * step;
  const parts = [...asked, allowance, underside];
  const written = (n: number): string => String(Math.round(n * 100) / 100);
  return {
    symbol: "m",
    words: "mark on the bit, from its tip",
    value,
    unit,
    clause: "common practice, no source",
    formula: `${asked.length > 1 ? "max(t_lift, t_anchor)" : asked[0]!.symbol} + a + s, rounded up to ${unit === "in" ? "1/4 in" : "5 mm"}`,
    worked: `${asked.length > 1 ? `max(${asked.map((t) => written(t.value)).join(", ")})` : written(asked[0]!.value)} + ${written(allowance.value)} + ${written(underside.value)}`,
    from: parts,
  };
};

const ofPractice = (symbol: string, words: string, given: Default, { units }: Job): Term =>
  term(symbol, words, assumed(given).value, "length", units, { basis: `assumed: ${given.why} (${given.source})` });

/** 3/8 in, or the 10 mm bit where millimetres are sold. */
export const bitSize = (job: Job): Term => {
  const size = ofPractice("d", "diameter of the bit", drillPractice.bit, job);
  return job.units === "si" ? { ...size, value: 10 } : size;
};
