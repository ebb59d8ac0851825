/** Lines that somebody or something asks for. */
import type { WantedLine } from "@floorworthy/engine/joints";
import type { Door, Job, Joint } from "@floorworthy/job";
import type { Assessment, PlacedBase } from "../assessment.ts";
import { boxOf } from "../layout.ts";
import { worth } from "./practice.ts";

/** A wanted line, with what a person calls it. */
export interface AskedLine extends WantedLine {
  readonly what: string;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1;

/** Midway between two columns that stand across or along the bay. */
const betweenColumns = ([a, b]: readonly PlacedBase[]): readonly AskedLine[] => {
  if (!a || !b || a.outline.length === 0 || b.outline.length === 0) return [];
  const [dx, dy] = [Math.abs(a.centre.x - b.centre.x), Math.abs(a.centre.y - b.centre.y)];
  const [axis, along] = dx > dy ? (["x", "y"] as const) : (["y", "x"] as const);
  if (Math.min(dx, dy) > 0.1 * Math.max(dx, dy)) return [];
  const box = boxOf([...a.outline, ...b.outline]);
  const [from, to] = along === "y" ? [box.y0, box.y1] : [box.x0, box.x1];
  return [
    {
      axis,
      at: (a.centre[axis] + b.centre[axis]) / 2,
      from,
      to,
      why: "It runs midway between the lift's columns, where a crack does least harm.",
      worth: worth.betweenColumns,
      what: "a line midway between the columns",
    },
  ];
};

/** How far into the floor a jamb's line is looked for. */
const INWARD = 300;

const jambs = (door: Door, box: ReturnType<typeof boxOf>): readonly AskedLine[] => {
  const across = near(door.from.y, door.to.y);
  if (!across && !near(door.from.x, door.to.x)) return [];
  const [axis, along] = across ? (["x", "y"] as const) : (["y", "x"] as const);
  const [low, high] = along === "y" ? [box.y0, box.y1] : [box.x0, box.x1];
  const wall = door.from[along];
  const [from, to] = wall - low < high - wall ? [low, low + INWARD] : [high - INWARD, high];
  return [door.from, door.to].map((jamb) => ({
    axis,
    at: jamb[axis],
    from,
    to,
    why: `It starts at the jamb of ${door.name || "a door"}, where a crack would.`,
    worth: worth.doorJamb,
    what: `a line at the jamb of ${door.name || "a door"}`,
  }));
};

/** A joint drawn in the job that runs along the walls; it is worth its own length once more. */
const drawn = ({ name, from, to }: Joint): readonly AskedLine[] => {
  const axis = near(from.x, to.x) ? "x" : near(from.y, to.y) ? "y" : undefined;
  if (!axis) return [];
  const along = axis === "x" ? "y" : "x";
  const [low, high] = [Math.min(from[along], to[along]), Math.max(from[along], to[along])];
  return [
    {
      axis,
      at: from[axis],
      from: low,
      to: high,
      why: `It was asked for in the job${name ? `: ${name}` : ""}.`,
      worth: high - low,
      what: name || "a joint drawn in the job",
    },
  ];
};

/** Two wishes at one place are one: the first, named for both. */
const merged = (lines: readonly AskedLine[]): readonly AskedLine[] => {
  const list: AskedLine[] = [];
  for (const line of lines) {
    const i = list.findIndex(
      (l) => l.axis === line.axis && near(l.at, line.at) && l.from < line.to && l.to > line.from,
    );
    const same = list[i];
    if (!same) list.push(line);
    else
      list[i] = {
        ...same,
        from: Math.min(same.from, line.from),
        to: Math.max(same.to, line.to),
        worth: same.worth + line.worth,
        why: `${same.why} ${line.why}`,
      };
  }
  return list;
};

export const proposedJoints = (job: Job): readonly Joint[] =>
  job.floor.joints.filter((joint) => joint.state === "proposed");

/** Joints drawn askew to the walls: no layout of straight cuts along the walls can hold them. */
export const askewJoints = (job: Job): readonly Joint[] =>
  proposedJoints(job).filter((joint) => drawn(joint).length === 0);

export const wantedFor = (job: Job, { layout }: Assessment): readonly AskedLine[] => {
  if (!layout.outline) return [];
  const box = boxOf(layout.outline);
  const inside = ({ axis, at }: AskedLine) =>
    axis === "x" ? at > box.x0 + 1 && at < box.x1 - 1 : at > box.y0 + 1 && at < box.y1 - 1;
  return merged([
    ...proposedJoints(job).flatMap(drawn),
    ...betweenColumns(layout.bases),
    ...job.bay.doors.flatMap((door) => jambs(door, box)),
  ]).filter(inside);
};
