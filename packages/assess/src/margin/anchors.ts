import { type AnchorProduct, checkAnchorGroup } from "@floorworthy/engine/anchors";
import { type Check, isUnable, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import { baseAxis } from "../layout.ts";
import { baseWords } from "./base-words.ts";
import { type BaseCase, most, pullOf } from "./cases.ts";
import { concreteAt, type JudgedInputs } from "./inputs.ts";
import { LOAD_FACTOR } from "./practice.ts";

export interface AnchorAnswer {
  readonly checks: readonly MarginCheck[];
  readonly notes: readonly string[];
  readonly unable: readonly Unable[];
}

/** Anchors of every base under the cases that pull or push them most; of each check the worst is kept. */
export const anchorChecks = (
  job: Job,
  inputs: JudgedInputs,
  cases: readonly BaseCase[],
  weight: MarginCheck["weight"],
): AnchorAnswer => {
  const found = new Map<string, MarginCheck>();
  const notes = new Set<string>();
  const unable: Unable[] = [];
  const { product } = inputs;
  if (!product) return { checks: [], notes: [], unable: [] };
  for (const c of governing(cases.filter((one) => one.base.anchors.length > 0))) {
    for (const concrete of ["cracked", "uncracked"] as const) {
      for (const mode of ["service-allowance", "strength-design"] as const) {
        if (mode === "strength-design" && weight === "advice") continue;
        const answer = groupOf(job, inputs, product, c, concrete, mode);
        if (isUnable(answer)) {
          unable.push(answer);
          continue;
        }
        for (const note of [...answer.notes, ...answer.missing]) notes.add(note);
        for (const check of answer.checks) {
          keepWorst(found, named(check, c, concrete, mode, mode === "strength-design" ? "advice" : weight));
        }
      }
    }
  }
  return { checks: merged([...found.values()]), notes: [...notes], unable };
};

/** A check that cracks and load factors do not change is shown once. */
const merged = (checks: readonly MarginCheck[]): MarginCheck[] => {
  const same = (check: MarginCheck, id: string): boolean => {
    const twin = checks.find((c) => c.id === id);
    return twin !== undefined && (twin.ratio === check.ratio || Math.abs(twin.ratio / check.ratio - 1) < 1e-9);
  };
  return checks
    .filter((c) => !(c.concrete === "uncracked" && same(c, c.id.replace(/uncracked$/, "cracked"))))
    .filter((c) => !(c.id.includes("-design-") && same(c, c.id.replace("-design-", "-"))))
    .map((c) => {
      if (c.concrete !== "cracked" || !same(c, c.id.replace(/cracked$/, "uncracked"))) return c;
      const { concrete: _, ...rest } = c;
      return rest;
    });
};

const groupOf = (
  job: Job,
  inputs: JudgedInputs,
  product: AnchorProduct,
  c: BaseCase,
  state: "cracked" | "uncracked",
  mode: "service-allowance" | "strength-design",
) => {
  const { h, f } = concreteAt(inputs, c.side);
  const factor = mode === "strength-design" ? LOAD_FACTOR : 1;
  const n = c.base.anchors.length;
  const anchors = c.base.anchors.map(({ id, at }, i) => ({
    id,
    x: at.x,
    y: at.y,
    tension: factor * (c.rest.forAnchors.anchorTension[i]?.T ?? 0),
    shearX: (factor * c.reaction.Vx) / n,
    shearY: (factor * c.reaction.Vy) / n,
  }));
  return checkAnchorGroup(
    anchors,
    product,
    { fc: f, thickness: h, state, supplementary: "none" },
    { barriers: barriersFor(job, c.base) },
    mode,
    baseAxis(job, c.side),
  );
};

const governing = (cases: readonly BaseCase[]): BaseCase[] => {
  const picked = [...new Set(cases.map((c) => c.side))].flatMap((side) => {
    const own = cases.filter((c) => c.side === side);
    return [
      most(own, pullOf),
      most(own, (c) => Math.max(0, ...c.rest.forAnchors.anchorTension.map(({ T }) => T))),
      most(own, (c) => Math.hypot(c.reaction.Vx, c.reaction.Vy)),
    ].filter((c) => c !== undefined);
  });
  return [...new Set(picked)];
};

const named = (
  check: Check,
  c: BaseCase,
  concrete: "cracked" | "uncracked",
  mode: string,
  weight: MarginCheck["weight"],
): MarginCheck => ({
  ...check,
  id: `${check.id}-${mode === "strength-design" ? "design-" : ""}${concrete}`,
  title: mode === "strength-design" ? `${check.title} (strength design)` : check.title,
  governs: [`${baseWords(c.side)}, ${c.caseName}`, check.governs].filter(Boolean).join(": "),
  group: "anchors",
  concrete,
  weight,
});

export const keepWorst = (found: Map<string, MarginCheck>, check: MarginCheck): void => {
  const before = found.get(check.id);
  if (!before || check.ratio > before.ratio) found.set(check.id, check);
};
