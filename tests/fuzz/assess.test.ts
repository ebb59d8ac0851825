import { assess } from "@floorworthy/assess";
import { createGenerator } from "@floorworthy/engine/numerics";
import type { Choice, Job, Quantity } from "@floorworthy/job";
import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

/* Random jobs: no crash, no NaN or undefined in anything shown, no endless loop, every outcome has a reason. */

const text = `
floorworthy: 1
title: Start of every random job
date: 2026-10-01
lift:
  name: Any
  kind: two-post
  manual: in-hand
  top: overhead-tied
  rated: 10000 lb
  columnWeight: 650 lb
  spacing: 126 in
  tieHeight: 144 in
  overallHeight: 148 in
  pickupHeight: 28 in
  fullHeight: 80 in
  reachCar: 37 in
  reachTruck: 45 in
  padSpacing: 60 in
  base: {outline: {width: 20 in, depth: 18 in}}
  anchors:
    holes: [["-7.5 in", "-6.5 in"], ["-7.5 in", "6.5 in"], ["4 in", "-6.5 in"], ["4 in", "6.5 in"]]
    product: {sheet: in-hand, kind: expansion, diameter: 3/4 in, nominalEmbedment: 4 in, effectiveEmbedment: 3.25 in, category: "1", pulloutCracked: 5000 lb}
  asks: {thickness: 4.25 in, strength: 3000 psi, days: 28 d, edge: 6 in, wall: 6 in, slope: 3 %, reinforcement: mesh}
bay:
  outline: {width: 24 ft, depth: 24 ft}
  walls: [{name: back, from: ["0 in", "0 in"], to: ["24 ft", "0 in"]}]
  ceiling: 12 ft
floor:
  state: standing
  kind: slab-on-ground
  below: ground
  postTension: none-shown
  heat: none
  thickness: 6 in
  ageDays: 400 d
  readings: [{near: left, thickness: 5.9 in}, {near: right, thickness: 6.1 in}]
  strength: {specified: {value: 4000 psi, basis: documented}, tickets: in-hand}
  joints: [{name: J1, x: 12 ft}]
  cracks: [{name: C1, line: [["1 ft", "1 ft"], ["3 ft", "9 ft"]]}]
  ground: {k: 100 pci, soil: clay}
columns: {left: ["81 in", "154 in"], right: ["207 in", "154 in"]}
`;

const start = (): Job => {
  const read = readJob(text, { name: "start" });
  if (!read.ok) throw new Error(read.issues.map((issue) => issue.message).join("\n"));
  return read.job;
};

type Draw = () => number;

const unknown = { known: false } as const;
const isQuantity = (v: object): v is Quantity => "known" in v && (v as { known: boolean }).known && "written" in v;
const isChoice = (v: object): v is Choice<string> =>
  "known" in v && (v as { known: boolean }).known && !("written" in v);

/** The same value with some facts made unknown, some numbers pulled about, some lists emptied. */
const shaken = (value: unknown, draw: Draw, forget: number): unknown => {
  if (Array.isArray(value)) return draw() < forget / 4 ? [] : value.map((v) => shaken(v, draw, forget));
  if (typeof value !== "object" || value === null) return value;
  if (isQuantity(value) && value.known) {
    if (draw() < forget) return unknown;
    const by = draw() < 0.1 ? 10 ** (4 * draw() - 2) : 0.6 + 0.8 * draw();
    const spread = draw() < 0.3 ? draw() * 0.3 : 0;
    const v = value.value * by;
    const ends = [v * (1 - spread), v * (1 + spread)].toSorted((a, b) => a - b);
    return { ...value, value: v, low: ends[0], high: ends[1] };
  }
  if (isChoice(value)) return draw() < forget ? unknown : value;
  if ("x" in value && "y" in value)
    return {
      x: (value as { x: number }).x + (draw() - 0.5) * 100,
      y: (value as { y: number }).y + (draw() - 0.5) * 100,
    };
  return Object.fromEntries(
    Object.entries(value).map(([key, v]) => [
      key,
      key === "outline" || key === "readings" ? shaken(v, draw, 0) : shaken(v, draw, forget),
    ]),
  );
};

const words = {
  postTension: ["none-shown", "suspected", "stamped"],
  kind: ["slab-on-ground", "suspended", "asphalt"],
  heat: ["none", "located", "not-located"],
} as const;

const randomJob = (job: Job, draw: Draw, forget: number): Job => {
  const shook = shaken(job, draw, forget) as Job;
  const pick = <K extends keyof typeof words>(key: K) =>
    draw() < 0.1
      ? { known: true, value: words[key][Math.floor(draw() * 3)]!, basis: { kind: "stated" } }
      : shook.floor[key];
  const floor = {
    ...shook.floor,
    postTension: pick("postTension"),
    kind: pick("kind"),
    heat: pick("heat"),
    state: draw() < 0.2 ? "to-be-poured" : "standing",
  };
  return {
    ...shook,
    floor,
    units: draw() < 0.5 ? "si" : "inch-pound",
    position: draw() < 0.1 ? undefined : shook.position,
  } as Job;
};

/** Where something shown is not a number or not a word. */
const faults = (value: unknown, path = ""): string[] => {
  if (typeof value === "number")
    return Number.isNaN(value) || (!Number.isFinite(value) && !path.endsWith(".ratio")) ? [`${path} = ${value}`] : [];
  if (typeof value === "string") return /NaN|Infinity|undefined|\[object/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, v]) => faults(v, `${path}.${key}`));
};

const judgeMany = (count: number, seed: number, forget: number): void => {
  const job = start();
  const draw = createGenerator(seed);
  for (let i = 0; i < count; i++) {
    const random = randomJob(job, draw, forget);
    const answer = assess(random);
    const wrong = faults(answer);
    expect(wrong, `job ${i} of seed ${seed}`).toEqual([]);
    expect(answer.reasons.length, `job ${i} of seed ${seed}`).toBeGreaterThan(0);
    if (answer.stops.length > 0) expect(answer.margin.checks).toEqual([]);
  }
};

describe("random jobs", () => {
  test("10,000 with facts missing", () => judgeMany(10_000, 1, 0.6), 600_000);
  test("40 with everything known", () => judgeMany(40, 2, 0), 120_000);
});
