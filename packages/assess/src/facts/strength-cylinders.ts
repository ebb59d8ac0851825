import { cylinderAcceptance } from "@floorworthy/engine/codes/aci318-19";
import { fromBase, type Term, toBase } from "@floorworthy/engine/quantities";
import type { CylinderTest, Job } from "@floorworthy/job";
import { shown, term } from "./print.ts";
import type { Evidence } from "./strength-finding.ts";

interface Tested extends CylinderTest {
  readonly strength: Extract<CylinderTest["strength"], { known: true }>;
}

/** Standard-cured from 28 days, or cured beside the slab at any age: those show what is there. */
export const usableCylinders = ({ floor }: Job): readonly Tested[] =>
  floor.strength.cylinders.flatMap((test) =>
    test.strength.known && (test.ageDays >= 28 || test.cured === "field") ? [{ ...test, strength: test.strength }] : [],
  );

/**
 * Standard-cured cylinders are judged against the ordered strength: no average of three in a row under it, none under it
 * by more than 500 psi (a tenth above 5,000 psi). Without an order, or where they do not comply, the lowest counts.
 * @clause ACI 318-19, 26.12.3.1
 */
export const fromCylinders = (job: Job, tests: readonly Tested[]): Evidence => {
  const standard = tests.filter((test) => test.cured === "standard" && test.ageDays >= 28);
  return standard.length > 0 ? judged(job, standard) : fieldCured(job, tests);
};

const judged = (job: Job, tests: readonly Tested[]): Evidence => {
  const { units } = job;
  const { specified } = job.floor.strength;
  const results = tests.map((test) => test.strength.low);
  const [lowest, mean] = [Math.min(...results), results.reduce((a, b) => a + b, 0) / results.length];
  const rows = tests.map((test, i) =>
    term(`f${i + 1}`, `cylinder at ${test.ageDays} days, standard-cured`, results[i]!, "stress", units, {
      basis: "cylinder report",
    }),
  );
  const f = specified.known ? specified.value : lowest;
  const found = cylinderAcceptance(results.map(psi), psi(f));
  const enough = found.leastAverage !== undefined;
  const complies = specified.known && enough && found.verdict === "complies";
  const pageValue = complies
    ? Math.max(f, lowest)
    : specified.known
      ? Math.min(lowest, ...averageOf(found.leastAverage))
      : lowest;
  const counts = specified.known ? Math.min(f, lowest) : lowest;
  const count = `${tests.length} cylinder${tests.length === 1 ? "" : "s"} of 28 days or more`;
  const verdict = !specified.known
    ? "no ordered strength to compare with: the lowest counts"
    : !enough
      ? "fewer than three, so no average of three in a row: the lowest counts, not more than ordered in the margin"
      : complies
        ? `they comply with the ordered ${shown(f, "stress", units)} (ACI 318-19 26.12.3.1)`
        : `they do not comply with the ordered ${shown(f, "stress", units)} (ACI 318-19 26.12.3.1): the lowest counts`;
  return {
    shown: pageValue,
    worst: counts,
    best: Math.max(mean, counts),
    why: `${count}; ${verdict}`,
    from: "cylinders",
    atMost: undefined,
    workings: term("f'c", "compressive strength shown by cylinders", pageValue, "stress", units, {
      clause: "ACI 318-19 26.12.3.1",
      basis: verdict,
      from: [...acceptanceTerms(job, found, specified.known), ...rows],
    }),
    beside: [],
  };
};

const acceptanceTerms = ({ units }: Job, found: ReturnType<typeof cylinderAcceptance>, known: boolean): Term[] => {
  const mpa = (value: number): number => toBase(value, "psi");
  return [
    ...(found.leastAverage === undefined
      ? []
      : [
          term("f̄₃", "least average of three in a row; asked: f'c", mpa(found.leastAverage), "stress", units, {
            clause: "ACI 318-19 26.12.3.1(b)(1)",
          }),
        ]),
    ...(known
      ? [
          term("f_min", "least a single test may be", mpa(found.leastAllowed), "stress", units, {
            formula: "f'c − 500 psi; 0.90 f'c above 5,000 psi",
            clause: "ACI 318-19 26.12.3.1(b)(2)",
          }),
        ]
      : []),
  ];
};

/** Kept beside the slab: the lowest is a strength that was there at that age, and concrete only gains. */
const fieldCured = (job: Job, tests: readonly Tested[]): Evidence => {
  const lowest = Math.min(...tests.map((test) => test.strength.low));
  const highest = Math.max(...tests.map((test) => test.strength.high));
  const why = `lowest of ${tests.length} cylinder${tests.length === 1 ? "" : "s"} cured beside the slab`;
  return {
    shown: lowest,
    worst: lowest,
    best: highest,
    why,
    from: "cylinders",
    atMost: undefined,
    workings: term("f'c", "compressive strength shown by field-cured cylinders", lowest, "stress", job.units, {
      basis: why,
      from: tests.map((test, i) =>
        term(`f${i + 1}`, `cylinder at ${test.ageDays} days, field-cured`, test.strength.low, "stress", job.units),
      ),
    }),
    beside: [],
  };
};

const averageOf = (value: number | undefined): number[] => (value === undefined ? [] : [toBase(value, "psi")]);
const psi = (value: number): number => fromBase(value, "psi");
