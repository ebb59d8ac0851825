/** Whatever is not known, is at the edge or makes no sense: an answer in words, no crash, no number that is none. */
import { readdirSync, readFileSync } from "node:fs";
import { judgeLoose } from "@floorworthy/assess/catalogue";
import { type Placing, placeLift } from "@floorworthy/assess/place";
import { createGenerator } from "@floorworthy/engine/numerics";
import { type Job, readJob, unknown } from "@floorworthy/job";
import { expect, test } from "vitest";

const load = (name: string): string => readFileSync(`examples/lifts/${name.replace(/^.*\//, "")}`, "utf8");
const jobs: readonly Job[] = readdirSync("examples")
  .filter((name) => name.endsWith(".yaml"))
  .flatMap((name) => {
    const read = readJob(readFileSync(`examples/${name}`, "utf8"), { name, load });
    return read.ok ? [read.job] : [];
  });

const dropped = (value: unknown, chance: number, next: () => number): unknown => {
  if (Array.isArray(value)) return value.filter(() => next() > chance / 4).map((v) => dropped(v, chance, next));
  if (typeof value !== "object" || value === null) return value;
  if ("known" in value) return next() < chance ? unknown : value;
  return Object.fromEntries(
    Object.entries(value).map(([key, v]) => [key, "x" in value ? v : dropped(v, chance, next)]),
  );
};

/** Facts lost here and there, the lift wanted anywhere, even outside the bay, and turned anyhow. */
const shaken = (job: Job, seed: number): Job => {
  const next = createGenerator(seed);
  const at = () => ({ x: (next() * 1.4 - 0.2) * 9000, y: (next() * 1.4 - 0.2) * 9000 });
  const lost = dropped({ lift: job.lift, vehicles: job.vehicles, floor: job.floor }, 0.25, next) as Pick<
    Job,
    "lift" | "vehicles" | "floor"
  >;
  const left = at();
  const angle = next() < 0.5 ? 0 : next() * 2 * Math.PI;
  const right = { x: left.x + 3200 * Math.cos(angle), y: left.y + 3200 * Math.sin(angle) };
  return {
    ...job,
    lift: { ...lost.lift, anchors: { ...lost.lift.anchors, holes: job.lift.anchors.holes }, base: job.lift.base },
    vehicles: lost.vehicles,
    floor: { ...lost.floor, joints: job.floor.joints, cracks: job.floor.cracks, zones: job.floor.zones },
    position: next() < 0.1 ? undefined : { left, right },
  };
};

const numbersOf = (value: unknown): readonly number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(numbersOf)
      : [];

test("30 shaken jobs are placed or refused in words", () => {
  expect(jobs.length).toBeGreaterThan(5);
  const answers = new Set<Placing["answer"]>();
  for (let seed = 1; seed <= 30; seed++) {
    const job = shaken(jobs[seed % jobs.length]!, seed);
    const placing = placeLift(job);
    answers.add(placing.answer);
    expect(placing.sentence.length, `seed ${seed}`).toBeGreaterThan(10);
    expect(JSON.stringify(placing)).not.toMatch(/NaN|Infinity|undefined/);
    expect(numbersOf(placing).every(Number.isFinite), `seed ${seed}`).toBe(true);
    expect(["here", "move"].includes(placing.answer)).toBe(placing.proposed !== undefined);
    const loose = judgeLoose({
      ...job,
      lift: { ...job.lift, fixing: { known: true, value: "loose", basis: { kind: "stated" } } },
    });
    expect(loose.sentence).not.toMatch(/NaN|undefined/);
  }
  expect(answers.size).toBeGreaterThan(2);
});
