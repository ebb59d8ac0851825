import { type Assessment, assess } from "@floorworthy/assess";
import { type Job, readJob } from "@floorworthy/job";

const base = `
floorworthy: 1
title: A floor that stands
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
  pickupHeight: 28 in
  fullHeight: 80 in
  reachCar: 37 in
  reachTruck: 45 in
  padSpacing: 60 in
  base: {outline: {width: 20 in, depth: 18 in}}
  anchors:
    holes:
      - ["-7.5 in", "-6.5 in"]
      - ["-7.5 in", "0 in"]
      - ["-7.5 in", "6.5 in"]
      - ["4 in", "-6.5 in"]
      - ["4 in", "6.5 in"]
    product: {sheet: in-hand, kind: expansion, diameter: 3/4 in, nominalEmbedment: 4 in, effectiveEmbedment: 3.25 in, category: "1", pulloutCracked: 5000 lb}
  asks: {thickness: 4.25 in, strength: 3000 psi, edge: 6 in}
bay:
  outline: {width: 24 ft, depth: 26 ft}
  ceiling: 13 ft
columns: {left: ["81 in", "154 in"], right: ["207 in", "154 in"]}
`;

const sound: Readonly<Record<string, string>> = {
  state: "standing",
  kind: "slab-on-ground",
  below: "ground",
  postTension: "none-shown",
  heat: "none",
  utilities: "none",
  layer: "none",
  ageDays: "9000 d",
  readings: `
    - {near: left, thickness: 7.1 in}
    - {near: left, thickness: 7.3 in}
    - {near: left, thickness: 7.0 in}
    - {near: right, thickness: 7.2 in}
    - {near: right, thickness: 7.4 in}
    - {near: right, thickness: 7.1 in}`,
  strength: "{specified: {value: 4000 psi, basis: documented}, tickets: in-hand}",
};

type Floor = Readonly<Record<string, string>>;

/**
 * A sound floor (7 in, papers in hand, 10,000-lb tied lift) with some facts written otherwise; "" leaves a fact out. Without
 * the anchors' depth no margin is computed: quicker, and the page decides all the same.
 */
export const floorJob = (floor: Floor = {}, margin: "computed" | "left-out" = "left-out"): Job => {
  const lines = Object.entries({ ...sound, ...floor }).filter(([, value]) => value !== "");
  const lift = margin === "computed" ? base : base.replace("effectiveEmbedment: 3.25 in, ", "");
  const text = `${lift}floor:\n${lines.map(([key, value]) => `  ${key}: ${value}`).join("\n")}\n`;
  const read = readJob(text, { name: "floor" });
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return read.job;
};

export const answerFor = (floor: Floor = {}): Assessment => assess(floorJob(floor));

export const judgedWithMargin = (floor: Floor = {}): Assessment => assess(floorJob(floor, "computed"));

export const pageLine = (answer: Assessment, id: string): Assessment["page"]["lines"][number] => {
  const line = answer.page.lines.find((l) => l.id === id);
  if (!line) throw new Error(`no line ${id}`);
  return line;
};
