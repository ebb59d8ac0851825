import { basisWords } from "../facts/known.ts";
import { type Line, notAsked } from "./line.ts";

export const reinforcementLine: Line = (job) => {
  const [id, title] = ["reinforcement", "Reinforcement"];
  const { reinforcement: asked } = job.lift.asks;
  if (!asked.known || asked.value === "none") return notAsked(id, title);
  const line = { id, title, asked: asked.value };
  const there = job.floor.reinforcement;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not known",
      why: "A cover meter, radar or the drawings would show it.",
    };
  const enough = there.value === asked.value || (asked.value === "mesh" && there.value === "bars");
  return { ...line, result: enough ? "meets" : "fails", found: there.value, why: basisWords(there.basis) };
};

export const slopeLine: Line = (job) => {
  const [id, title] = ["slope", "Slope of the floor under the lift"];
  const asked = job.lift.asks.slope;
  if (!asked.known) return notAsked(id, title);
  const percent = (v: number): string => `${Math.round(v * 1000) / 10} %`;
  const line = { id, title, asked: `at most ${percent(asked.low)}` };
  const { slope: there } = job.floor;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not measured",
      why: "A level at the base corners would show it; shims and grout have a limit.",
    };
  return {
    ...line,
    result: there.high <= asked.low + 1e-9 ? "meets" : "fails",
    found: percent(there.high),
    why: basisWords(there.basis),
  };
};
