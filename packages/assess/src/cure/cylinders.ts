import { type Gain, strengthRatio } from "@floorworthy/engine/concrete";
import type { CylinderTest, Job } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import type { Potential } from "./potential.ts";
import type { Subject } from "./subject.ts";

/** What one age of cylinders says of the slab. */
export interface CylinderFinding {
  readonly ageDays: number;
  readonly cured: CylinderTest["cured"];
  /** the lowest of that age, MPa */
  readonly lowest: number;
  readonly says: "settles" | "moves-the-curve" | "lowers-the-mix" | "does-not-show" | "superseded" | "not-yet-broken";
  readonly words: string;
}

/** The cylinders of this pour, and the floor's own where the floor is the pour. */
export const cylindersOf = ({ pour, floor }: Job, { whole }: Pick<Subject, "whole">): readonly CylinderTest[] => [
  ...(pour?.cylinders ?? []),
  ...(whole === "slab" ? floor.strength.cylinders : []),
];

interface Group {
  readonly ageDays: number;
  readonly cured: CylinderTest["cured"];
  readonly lowest: number;
}

const groups = (tests: readonly CylinderTest[]): readonly Group[] => {
  const known = tests.flatMap(({ strength, ageDays, cured }) =>
    strength.known ? [{ ageDays, cured, lowest: strength.low }] : [],
  );
  return known
    .filter(
      (a) =>
        !known.some(
          (b) =>
            b !== a &&
            same(a, b) &&
            (b.lowest < a.lowest || (b.lowest === a.lowest && known.indexOf(b) < known.indexOf(a))),
        ),
    )
    .toSorted((a, b) => a.ageDays - b.ageDays);
};

const same = (a: Group, b: Group): boolean => a.ageDays === b.ageDays && a.cured === b.cured;

/** What cylinders do to the clock: the potential of the mix, the point the curve goes through, and each in words. */
export const readCylinders = (
  job: Job,
  subject: Subject,
  gain: Gain,
  ask: number | undefined,
  age: number | undefined,
): { readonly potential: Potential; readonly findings: readonly CylinderFinding[] } => {
  const all = groups(cylindersOf(job, subject));
  const broken = all.filter(({ ageDays }) => age === undefined || ageDays <= age + 1);
  const standard = broken.filter(({ cured }) => cured === "standard");
  const at28 = (group: Group): number => group.lowest / Math.min(1, strengthRatio(group.ageDays, gain));
  const strength28 = Math.min(subject.strength28.value, ...standard.map(at28));
  const field = broken.filter(({ cured }) => cured === "field");
  // a strength that was there stays there: the first that reached the ask settles it
  const settled = ask === undefined ? undefined : field.find(({ lowest }) => lowest >= ask);
  const counts = settled ?? field.at(-1);
  const print = (mpa: number): string => shown(mpa, "stress", job.units);
  const finding = (group: Group): CylinderFinding => {
    const about = `${group.cured === "field" ? "Field-cured" : "Standard-cured"}, ${group.ageDays} days, ${print(group.lowest)}`;
    if (!broken.includes(group))
      return { ...group, says: "not-yet-broken", words: `${about}: older than the concrete is; not counted.` };
    if (group.cured === "standard")
      return at28(group) < subject.strength28.value * (1 - 1e-9)
        ? {
            ...group,
            says: "lowers-the-mix",
            words: `${about}: it does not show the slab's strength, but points to ${print(at28(group))} at 28 days, under the ${print(subject.strength28.value)} ordered; that counts.`,
          }
        : {
            ...group,
            says: "does-not-show",
            words: `${about}: kept warm and wet in the laboratory, it shows the mix and not the slab.`,
          };
    if (group !== counts) return { ...group, says: "superseded", words: `${about}: another one counts.` };
    if (ask !== undefined && group.lowest >= ask)
      return {
        ...group,
        says: "settles",
        words: `${about}: at or above the ${print(ask)} asked; the strength is shown from day ${group.ageDays} on. One cylinder is thin evidence: two of 6 × 12 in or three of 4 × 8 in make a test (ACI 318-19 26.12.1.1, from memory).`,
      };
    return {
      ...group,
      says: "moves-the-curve",
      words: `${about}: below the ask. Every curve is drawn through it: weaker than counted, the whole mix is taken to be weaker in that share; stronger, the slab is taken to be further on but never to become more than ordered.`,
    };
  };
  return {
    potential: { strength28, field: counts && { age: counts.ageDays, strength: counts.lowest } },
    findings: all.map(finding),
  };
};
