import { nutFactors, preloadFrom, retainedSpan, stressArea, type ThreadSurface } from "@floorworthy/engine/bolts";
import { fromBase, isUnable, preferredUnit, printQuantity, shown, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { torqueUnit } from "./printed.ts";
import { threadOf } from "./watch-rules.ts";

/** What torque says and what it does not. Said wherever a torque is shown. */
export const torqueSays: readonly string[] = [
  "Torque tells how hard the nut was to turn. About nine tenths of it go into rubbing, so the pull in the bolt follows from it only within a wide span.",
  "Torque says nothing of how much the concrete holds: a shallow anchor in a thin slab takes the same torque as a deep one until it lets go.",
  "Pull in the bolt is lost from the first minute on, also where nothing is wrong. What counts is whether the movement dies away.",
];

const surfaces: readonly { readonly surface: ThreadSurface; readonly words: string }[] = [
  { surface: "wax-or-ptfe", words: "waxed or coated thread" },
  { surface: "zinc-light-oil", words: "zinc-plated thread, lightly oiled" },
  { surface: "dry", words: "dry thread" },
  { surface: "gritty-or-rusty", words: "gritty or rusty thread" },
];

/** Preload made by the setting torque, over the span of nut factors, and what is left of it after ninety days. */
export const preloadTerms = (job: Job): Term[] => {
  const { torque } = job.lift.anchors;
  const thread = threadOf(job);
  if (!torque.known || isUnable(thread)) return [];
  const { units } = job;
  const [tUnit, fUnit, dUnit] = [torqueUnit(units), preferredUnit("force", units), preferredUnit("length", units)];
  const T: Term = {
    symbol: "T",
    words: "setting torque",
    value: fromBase(torque.value, tUnit),
    unit: tUnit,
    basis: basisWords(torque.basis),
  };
  const D: Term = {
    symbol: "D",
    words: "diameter of the bolt",
    value: fromBase(thread.diameter, dUnit),
    unit: dUnit,
    basis: thread.name,
  };
  const preload = ({ surface, words }: (typeof surfaces)[number], end: "low" | "high"): Term => {
    const K = nutFactors[surface][end === "low" ? "high" : "low"];
    return {
      symbol: "F",
      words: `preload, ${words}, K ${K}`,
      value: fromBase(preloadFrom(torque.value, thread.diameter, K), fUnit),
      unit: fUnit,
      clause: "Speck, Mechanical Fastening, Joining, and Assembly, p. 85",
      formula: "T / (K D)",
      worked: `${printQuantity(torque.value, "moment", { system: units, unit: tUnit, precision: 1 })} / (${K} × ${shown(D.value)} ${dUnit})`,
      from: [T, D],
    };
  };
  const { low, high } = retainedSpan(90);
  const kept = (part: number, kind: string): Term => ({
    symbol: "F90/F0",
    words: `pull left after 90 days, mean of tests, ${kind}`,
    value: 100 * part,
    unit: "%",
    clause: "Senkiw, ACI SP-130 (1992) 47-60",
    basis: "a published fact of two kinds of anchors, not of this one; no curve was published",
  });
  return [
    T,
    ...surfaces.flatMap((surface) => [preload(surface, "low"), preload(surface, "high")]),
    kept(high, "heavy-duty sleeve anchors"),
    kept(low, "lead caulking anchors"),
    ...yieldTerm(job, fUnit, stressArea(thread)),
  ];
};

const yieldTerm = ({ lift }: Job, unit: Term["unit"], area: number): Term[] => {
  const { steelYield, steelArea } = lift.anchors.product;
  if (!steelYield.known) return [];
  return [
    {
      symbol: "A fy",
      words: "pull at which the bolt yields",
      value: fromBase((steelArea.known ? steelArea.low : area) * steelYield.low, unit),
      unit,
      basis: basisWords(steelYield.basis),
    },
  ];
};
