import { distanceToSegment } from "@floorworthy/engine/geometry";
import { basisWords } from "../facts/known.ts";
import { shown } from "../facts/print.ts";
import { asks, type Line, notAsked } from "./line.ts";

export const wallLine: Line = (job, { bases }) => {
  const [id, title] = ["wall", "Base plates to walls"];
  const asked = job.lift.asks.wall;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const line = { id, title, asked: `at least ${shown(asked.high, "length", units)}` };
  const distances = bases.flatMap((base) =>
    job.bay.walls.flatMap(({ name, from, to }) =>
      base.outline.map((p) => ({ name, d: distanceToSegment(p, { a: from, b: to }) })),
    ),
  );
  const least = distances.toSorted((a, b) => a.d - b.d)[0];
  if (!least) return { ...line, result: "not-shown", found: "no walls on the plan", why: "The walls are not known." };
  return {
    ...line,
    result: least.d >= asked.high - 1e-6 ? "meets" : "fails",
    found: `${shown(least.d, "length", units)} to ${least.name}`,
    why: asks(asked),
  };
};

export const ceilingLine: Line = (job) => {
  const [id, title] = ["ceiling", "Headroom for the lift itself"];
  const needs = job.lift.asks.ceiling.known
    ? job.lift.asks.ceiling
    : job.lift.overallHeight.known
      ? job.lift.overallHeight
      : job.lift.tieHeight;
  if (!needs.known) return notAsked(id, title);
  const { units } = job;
  const line = { id, title, asked: `more than ${shown(needs.high, "length", units)}` };
  const { ceiling: there } = job.bay;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not measured",
      why: "Measure the lowest point over the bay: light, opener, door track.",
    };
  return {
    ...line,
    result: there.low > needs.high ? "meets" : "fails",
    found: shown(there.low, "length", units),
    why: basisWords(there.basis),
  };
};
