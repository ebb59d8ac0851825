import { isUnable, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { CaseReactions, MarginAnswer, MarginCheck } from "../assessment.ts";
import type { Facts } from "../facts/facts.ts";
import type { End } from "../facts/known.ts";
import { anchorChecks } from "./anchors.ts";
import { type BaseCase, baseCases } from "./cases.ts";
import { feetWords } from "./feet.ts";
import { type JudgedInputs, judgedInputs } from "./inputs.ts";
import { slabChecks } from "./slab.ts";

/** Nothing is computed where a stop says so. */
export const noMargin = (sentence: string, unable: readonly Unable[] = []): MarginAnswer => ({
  verdict: "not-computed",
  sentence,
  checks: [],
  best: [],
  information: [],
  cases: [],
  lean: [],
  unable,
});

/** whole: everything a person is shown; word: only what the verdict needs, for trying out answers to open questions. */
export type Detail = "whole" | "word";

/** Mechanics and published codes, at the worst end of every uncertain fact, with the best end beside. */
export const marginOf = (job: Job, facts: Facts, detail: Detail = "whole"): MarginAnswer => {
  const worst = endOf(job, facts, "worst", detail);
  if (isUnable(worst)) return noMargin(worst.reason, [worst]);
  const best = detail === "whole" ? endOf(job, facts, "best", "word") : worst;
  const bestChecks = isUnable(best) ? [] : best.counted;
  const verdict = wordOf(worst);
  return {
    verdict,
    sentence: sentenceFor(verdict, worst) + (detail === "whole" ? feetWords(job, facts.bases) : ""),
    checks: worst.counted.toSorted(byGroup),
    best: bestChecks.map(({ id, ratio }) => ({ id, ratio })),
    information: [...worst.hardUse, ...worst.information],
    cases: worst.cases,
    lean: worst.lean,
    unable: worst.unable,
  };
};

/** Where a part of the slab has no answer, nothing is called enough. */
const wordOf = ({ counted, hardUse, unable }: EndAnswer): MarginAnswer["verdict"] => {
  const word = wordFor(counted, hardUse);
  return unable.length > 0 && word !== "short" ? "not-computed" : word;
};

interface EndAnswer {
  readonly counted: readonly MarginCheck[];
  readonly hardUse: readonly MarginCheck[];
  readonly information: readonly MarginCheck[];
  readonly cases: readonly CaseReactions[];
  readonly lean: readonly Term[];
  readonly unable: readonly Unable[];
}

const endOf = (job: Job, facts: Facts, end: End, detail: Detail): EndAnswer | Unable => {
  const inputs = judgedInputs(job, facts, end);
  if (isUnable(inputs)) return inputs;
  const cases = baseCases(job, inputs, facts.bases);
  if (isUnable(cases)) return cases;
  const standing = (s: BaseCase["standing"]) => cases.filter((c) => c.standing === s);
  const counted = judged(job, inputs, standing("counted"), "limit");
  const rest =
    detail === "whole"
      ? [judged(job, inputs, standing("hard-use"), "advice"), judged(job, inputs, standing("information"), "advice")]
      : [];
  return {
    counted: counted.checks,
    hardUse: (rest[0]?.checks ?? [])
      .filter((c) => c.weight === "advice")
      .map((c) => ({ ...c, id: `hard-use-${c.id}` })),
    information: (rest[1]?.checks ?? []).map((c) => ({ ...c, id: `information-${c.id}` })),
    cases: reactionsShown(cases),
    lean: counted.lean,
    unable: counted.unable,
  };
};

const judged = (job: Job, inputs: JudgedInputs, cases: readonly BaseCase[], weight: MarginCheck["weight"]) => {
  if (cases.length === 0) return { checks: [], lean: [], unable: [] };
  const anchors = anchorChecks(job, inputs, cases, weight);
  const slab = slabChecks(job, inputs, cases, weight);
  return { checks: [...anchors.checks, ...slab.checks], lean: slab.lean, unable: [...anchors.unable, ...slab.unable] };
};

/**
 * ample: every ratio ≤ 0.8 cracked (first crack: twice the stress), also in hard use (60/40, stopped hard); enough: ≤ 1
 * cracked; thin: ≤ 1 only uncracked; short: > 1.
 */
const wordFor = (checks: readonly MarginCheck[], hardUse: readonly MarginCheck[]): MarginAnswer["verdict"] => {
  const counts = checks.filter((c) => c.weight === "limit");
  if (counts.length === 0) return "not-computed";
  const cracked = counts.filter((c) => c.concrete !== "uncracked");
  const uncracked = counts.filter((c) => c.concrete !== "cracked");
  if (holds(cracked, "ample") && holds(hardUse.filter(judgedHard), "enough")) return "ample";
  if (holds(cracked, "enough")) return "enough";
  return holds(uncracked, "enough") ? "thin" : "short";
};

/** Equal to the last printed digit is not over. */
const ROUNDING = 1 + 1e-9;

const limits = { enough: { crack: 1, other: 1 }, ample: { crack: 0.7, other: 0.8 } } as const;

const holds = (checks: readonly MarginCheck[], word: keyof typeof limits): boolean =>
  checks.every((c) => c.ratio <= limits[word][c.id.endsWith("slab-first-crack") ? "crack" : "other"] * ROUNDING);

const hardWords = (verdict: MarginAnswer["verdict"], hardUse: readonly MarginCheck[]): string => {
  if (verdict !== "ample" && verdict !== "enough") return "";
  const over = hardUse.filter(judgedHard).toSorted((a, b) => b.ratio - a.ratio)[0];
  return over && over.ratio > ROUNDING
    ? ` In hard use (60/40 on the pads or between the columns, stopped hard) it is not enough: ${over.title.toLowerCase()} ${percent(over.ratio)}.`
    : "";
};

const judgedHard = (c: MarginCheck): boolean =>
  c.concrete !== "uncracked" && c.weight === "advice" && !/collapse|closed-form/.test(c.id);

const notWhole = (unable: readonly Unable[]): string => {
  const first = unable[0];
  return first
    ? `The margin is not computed throughout: ${first.place}: ${first.reason}.`
    : "The margin is not computed.";
};

const sentenceFor = (verdict: MarginAnswer["verdict"], { counted, hardUse, unable }: EndAnswer): string => {
  const worst = counted
    .filter((c) => c.weight === "limit" && (verdict === "thin" || c.concrete !== "uncracked"))
    .toSorted((a, b) => b.ratio - a.ratio)[0];
  const which = worst
    ? ` Governing: ${worst.title.toLowerCase()}, ${percent(worst.ratio)} of what may be asked${worst.concrete ? ` (${worst.concrete} concrete)` : ""}.`
    : "";
  const words = {
    ample: "The margin is ample: every check keeps a fifth in hand, even in cracked concrete.",
    enough: "The margin is enough, also in cracked concrete.",
    thin: "The margin is thin: it holds only while the concrete around the anchors has no crack.",
    short: "The margin is short: published mechanics ask for more than this floor has.",
    "not-computed": notWhole(unable),
  };
  return words[verdict] + which + hardWords(verdict, hardUse);
};

const percent = (ratio: number): string =>
  Number.isFinite(ratio) ? `${Math.round(ratio * 100)} %` : "more than any floor can give, so beyond all";

const groupOrder = ["anchors", "base plate", "slab", "pad", "ground"];
const byGroup = (a: MarginCheck, b: MarginCheck): number =>
  groupOrder.indexOf(a.group) - groupOrder.indexOf(b.group) || b.ratio - a.ratio;

const reactionsShown = (cases: readonly BaseCase[]): CaseReactions[] => {
  const ids = [...new Set(cases.map((c) => c.caseId))];
  return ids.map((id) => {
    const own = cases.filter((c) => c.caseId === id);
    return {
      name: own[0]!.caseName,
      counted: own[0]!.standing === "counted" ? "counted" : "information",
      bases: own.map(({ side, reaction, terms }) => ({ side, ...reaction, terms })),
    };
  });
};
