import { type FourPost, fourPostCases, scissorCases } from "@floorworthy/engine/frames";
import type { Point } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, Support } from "@floorworthy/job";
import { ends, PLACE, type PlainCase, plain } from "./plain-case.ts";
import type { SupportDuty } from "./reactions.ts";

/** Posts or frame ends may stand this much off their rectangle, mm. */
const OFF = 75;

export const onFour = (
  job: Job,
  supports: readonly Support[],
  duty: SupportDuty,
  words: "posts" | "ends of the frames",
): PlainCase[] | Unable => {
  const corners = rectangle(supports.map(({ at }) => at));
  if (!corners)
    return unable(
      PLACE,
      `The four ${words} are not given as a rectangle: give their places, or the maker's load of each.`,
    );
  const { width, length, middle } = corners;
  const nameOf = (corner: string): string =>
    supports.find(({ at }) => corner === `${at.x < middle.x ? "left" : "right"}-${at.y < middle.y ? "front" : "rear"}`)!
      .id;
  // the vehicle stands over the lift's origin
  const place = { width, length, offsetX: -middle.x, offsetY: -middle.y };
  const found: PlainCase[] = [];
  for (const [standing, factor] of ends(duty)) {
    const common = { weight: duty.weight, dynamicFactor: factor, ...place, workForce: duty.workForce };
    const cases =
      words === "posts"
        ? fourPostCases({ ...common, postWeight: duty.columnWeight, runwayHeight: duty.fullRise } satisfies FourPost)
        : scissorCases({ ...common, ownWeight: 4 * duty.columnWeight, fullRise: duty.fullRise, fixedEnds: "front" });
    if (isUnable(cases)) return cases;
    const hard = /^(toward-|left-heavy|right-heavy)/;
    const kept =
      standing === "counted"
        ? cases.filter((c) => !hard.test(c.id))
        : cases.filter((c) => c.standing === "design" && !c.id.startsWith("work-"));
    found.push(...kept.map((c) => plain(job, c, standing, nameOf)));
  }
  return found;
};

const rectangle = (places: readonly Point[]) => {
  if (places.length !== 4) return undefined;
  const middle = { x: mean(places.map((p) => p.x)), y: mean(places.map((p) => p.y)) };
  const [dx, dy] = [places.map((p) => Math.abs(p.x - middle.x)), places.map((p) => Math.abs(p.y - middle.y))];
  const [width, length] = [2 * mean(dx), 2 * mean(dy)];
  const quarters = new Set(places.map((p) => `${p.x < middle.x},${p.y < middle.y}`));
  const square = [...dx.map((d) => d - width / 2), ...dy.map((d) => d - length / 2)].every((d) => Math.abs(d) <= OFF);
  return quarters.size === 4 && square ? { width, length, middle } : undefined;
};

export const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
