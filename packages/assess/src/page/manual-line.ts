import type { Job, Lift } from "@floorworthy/job";
import type { ManualLine, PageLine } from "../assessment.ts";

/** The fact of the lift's sheet that each line of the page asks. */
const askedBy: Readonly<Record<string, keyof Lift["asks"]>> = {
  thickness: "thickness",
  strength: "strength",
  days: "days",
  edge: "edge",
  joint: "joint",
  crack: "crack",
  wall: "wall",
  ceiling: "ceiling",
  reinforcement: "reinforcement",
  slope: "slope",
};

/** Where the manual asks what a line of the page asks; undefined where nobody wrote it down. */
const manualOf = ({ lift }: Job, id: string): ManualLine | undefined => {
  const key = askedBy[id];
  const own = key && lift.asks[key];
  // a joint or crack is an edge for an anchor where the page says nothing of its own
  const fact = own?.known || (key !== "joint" && key !== "crack") ? own : lift.asks.edge;
  if (!fact?.known || fact.basis.kind !== "documented") return undefined;
  const { kind: _, ...manual } = fact.basis;
  return Object.keys(manual).length > 0 ? manual : undefined;
};

export const withManual = (job: Job, line: PageLine): PageLine => {
  const manual = manualOf(job, line.id);
  return manual ? { ...line, manual } : line;
};
