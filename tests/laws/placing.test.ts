/**
 * Where a lift may stand in a job's bay, against the rules written out again point by point with distances alone; and the
 * laws of the map of the margin over the places.
 */
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { jobAt, marginMap, marginMapSteps, type Placing, placeLift } from "@floorworthy/assess/place";
import { distanceToSegment, type Point, pointInPolygon, polygonDistance } from "@floorworthy/engine/geometry";
import { createGenerator } from "@floorworthy/engine/numerics";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const jobOf = (name: string, change: (text: string) => string = (text) => text): Job => {
  const read = readJob(change(readFileSync(`examples/${name}.yaml`, "utf8")), { name });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const sawCut = jobOf("saw-cut-in-the-way");
const IN = 25.4;

const rectangle = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** The rules of this bay by hand: 24 × 25 ft, door from x = 4 to 20 ft at the front, one van; lengths in inches. */
const byHand = (job: Job, middle: Point, facing: 1 | -1): number => {
  const put = (u: number, v: number): Point => ({ x: middle.x + u * IN, y: middle.y + facing * v * IN });
  const box = (x0: number, y0: number, x1: number, y1: number): Point[] => {
    const [a, b] = [put(x0, y0), put(x1, y1)];
    return rectangle(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y));
  };
  const anchors = [-64, 64].flatMap((u) =>
    [
      [-7.25, -6.5],
      [-7.25, 0],
      [-7.25, 6.5],
      [4.25, -6.5],
      [4.25, 6.5],
    ].map(([du, dv]) => put(u + (u < 0 ? du! : -du!), dv!)),
  );
  const plates = [box(-73.5, -9, -54.5, 9), box(54.5, -9, 73.5, 9)];
  const body = box(-73.5, -9, 73.5, 9);
  const van = box(-40, -88, 40, 115);
  // driven in tail last when it faces the back wall, backed in when it is turned about: always out of the front
  const path = box(-40, facing === 1 ? -88 : -2000, 40, facing === 1 ? 2000 : 115);
  const [W, D] = [288 * IN, 300 * IN];
  const inRoom = (p: Point): number => Math.min(p.x, W - p.x, p.y, D - p.y);
  const jambs = [rectangle(0, D, 48 * IN, D + 1), rectangle(240 * IN, D, W, D + 1)];
  const bench = rectangle(24 * IN, 0, 264 * IN, 28 * IN);
  const lines = job.floor.joints.map(({ from, to }) => ({ a: from, b: to }));
  return Math.min(
    ...anchors.flatMap((p) => [inRoom(p) - 6 * IN, ...lines.map((line) => distanceToSegment(p, line) - 6 * IN)]),
    ...plates.flatMap((plate) => [
      ...plate.map((p) => inRoom(p) - 2 * IN),
      polygonDistance(plate, bench) > 0 ? 1e9 : -1,
      polygonDistance(plate, rectangle(0, 0, W, 24 * IN)) > 0 ? 1e9 : -1,
    ]),
    ...body.map(inRoom),
    polygonDistance(body, bench) > 0 ? 1e9 : -1,
    ...van.map((p) => inRoom(p) - 6 * IN),
    polygonDistance(van, bench) - 6 * IN,
    polygonDistance(van, rectangle(0, 0, W, 24 * IN)) > 0 ? 1e9 : -1,
    ...jambs.map((jamb) => polygonDistance(path, jamb) - 3 * IN),
    polygonDistance(path, bench) - 3 * IN,
  );
};

const inside = (placing: Placing, stand: string, p: Point): boolean =>
  placing.ways
    .find((way) => way.stand === stand)!
    .regions.some(
      ({ outline, holes }) =>
        pointInPolygon(p, outline) !== "outside" && holes.every((hole) => pointInPolygon(p, hole) !== "inside"),
    );

describe("the bay with a saw cut, by hand", () => {
  const placing = placeLift(sawCut);

  test("regions of both ways of standing are the places the rules allow, over 12,000 points", () => {
    const next = createGenerator(7);
    let [yes, no] = [0, 0];
    for (let i = 0; i < 6000; i++) {
      const p = { x: 288 * IN * next(), y: 300 * IN * next() };
      for (const [stand, facing] of [
        ["as-wanted", 1],
        ["turned-about", -1],
      ] as const) {
        const slack = byHand(sawCut, p, facing);
        if (Math.abs(slack) < 0.2) continue; // drawn up to 0.1 mm on the safe side
        if (slack > 0) yes++;
        else no++;
        expect(inside(placing, stand, p), `${stand} at ${p.x / IN}, ${p.y / IN}: ${slack}`).toBe(slack > 0);
      }
    }
    expect(yes).toBeGreaterThan(200);
    expect(no).toBeGreaterThan(5000);
  });

  test("at a hundred other wanted places: here only when the rules allow it, and the proposed place always is one", () => {
    const next = createGenerator(11);
    const answers = new Map<string, number>();
    for (let i = 0; i < 100; i++) {
      const [dx, dy] = [(next() - 0.5) * 3000, (next() - 0.5) * 3000];
      const move = (p: Point): Point => ({ x: p.x + dx, y: p.y + dy });
      const job = { ...sawCut, position: { left: move(sawCut.position!.left), right: move(sawCut.position!.right) } };
      const { answer, wanted, proposed, smallest, blockers } = placeLift(job, { stands: ["as-wanted"] });
      answers.set(answer, (answers.get(answer) ?? 0) + 1);
      const slack = byHand(job, wanted!.middle, 1);
      if (Math.abs(slack) > 0.2) expect(answer).toBe(slack > 0 ? "here" : "move");
      expect(blockers.length === 0).toBe(answer === "here");
      expect(byHand(job, proposed!.middle, 1)).toBeGreaterThanOrEqual(-0.01);
      expect(smallest!.distance).toBeLessThanOrEqual(proposed!.distance + 0.11);
      // a mark along each axis that was moved: whole sixteenths of an inch at the finest
      if (answer === "move" && Math.abs(proposed!.dy) > 1) {
        const sixteenths = (proposed!.position.left.y / IN) * 16;
        expect(Math.abs(sixteenths - Math.round(sixteenths))).toBeLessThan(1e-6);
      }
    }
    expect(answers.get("here")).toBeGreaterThan(5);
    expect(answers.get("move")).toBeGreaterThan(5);
  });

  test("a vehicle longer by a foot never opens a place, a post never does, and a lost door closes the bay", () => {
    const area = (job: Job): number =>
      placeLift(job).ways.reduce((sum, way) => sum + way.regions.reduce((s, region) => s + region.area, 0), 0);
    const all = area(sawCut);
    const longer = jobOf("saw-cut-in-the-way", (text) => text.replace("length: 203 in", "length: 215 in"));
    const post = rectangle(100 * IN, 200 * IN, 110 * IN, 210 * IN);
    expect(area(longer)).toBeLessThan(all);
    expect(area({ ...sawCut, bay: { ...sawCut.bay, posts: [{ name: "post", outline: post }] } })).toBeLessThan(all);
    const narrow = jobOf("saw-cut-in-the-way", (text) => text.replace("to: [20 ft, 25 ft]", "to: [11 ft, 25 ft]"));
    const { answer, sentence } = placeLift(narrow); // 84 in of door for 80 in and 3 in on either side
    expect(answer).toBe("nowhere");
    expect(sentence).toContain("wall beside garage door");
  });

  test("a quarter turn is looked at only where a door lies in line with it", () => {
    const side = jobOf("saw-cut-in-the-way", (text) =>
      text
        .replace("from: [4 ft, 25 ft], to: [20 ft, 25 ft]", "from: [24 ft, 4 ft], to: [24 ft, 21 ft]")
        .replace("  walls:\n", "  walls:\n    - { name: front wall, from: [0 ft, 25 ft], to: [24 ft, 25 ft] }\n"),
    );
    expect(placeLift(sawCut).ways.map(({ stand }) => stand)).toEqual(["as-wanted", "turned-about"]);
    expect(placeLift(side).ways.map(({ stand }) => stand)).toEqual(["as-wanted", "quarter-left", "quarter-right"]);
  });

  test("headroom is a plain no, with its numbers", () => {
    const low = jobOf("saw-cut-in-the-way", (text) => text.replace("ceiling: 13 ft", "ceiling: 12 ft"));
    const { answer, sentence, fits } = placeLift(low);
    expect(answer).toBe("nowhere");
    expect(sentence).toContain("151 in");
    expect(sentence).toContain("144 in");
    expect(fits[0]).toMatchObject({ id: "headroom", result: "does-not-fit" });
  });

  test("a roof that would meet the beam is said, and how far the vehicle may be raised", () => {
    const tall = jobOf("saw-cut-in-the-way", (text) =>
      text.replace("length: 203 in", "length: 203 in\n    height: 80 in"),
    );
    // rise 98 − 27 = 71 in; 80 + 71 = 151 in under a beam at 145 in: 65 in are left
    expect(placeLift(tall).fits.find(({ id }) => id === "roof")?.sentence).toMatch(
      /151 in .*beam at 145 in.*only 65 in/,
    );
  });
});

describe("the margin over the places", () => {
  const job = sawCut;
  const placing = placeLift(job);
  const worstOf = (moved: Job): number =>
    Math.max(
      ...assess(moved)
        .margin.checks.filter(({ weight, concrete }) => weight === "limit" && concrete !== "uncracked")
        .map(({ ratio }) => ratio),
    );

  test("is the margin of the job with its lift moved there", () => {
    const map = able(marginMap(job, placing, { count: 3 }));
    expect(map.points.length).toBeGreaterThan(2);
    for (const { at, ratio } of map.points) {
      const { left, right } = job.position!;
      const [dx, dy] = [at.x - (left.x + right.x) / 2, at.y - (left.y + right.y) / 2];
      const position = { left: { x: left.x + dx, y: left.y + dy }, right: { x: right.x + dx, y: right.y + dy } };
      expect(Math.abs(ratio! / worstOf(jobAt(job, { position })) - 1)).toBeLessThan(1e-9);
    }
  });

  test("tells its progress and stops when asked, keeping what it has", () => {
    const told: number[] = [];
    const cancelled = { aborted: false };
    const map = able(
      marginMap(job, placing, {
        count: 20,
        cancelled,
        tell: (done) => {
          told.push(done);
          if (done === 2) cancelled.aborted = true;
        },
      }),
    );
    expect(told).toEqual([1, 2]);
    expect(map.state).toBe("cancelled");
    expect(map.points).toHaveLength(2);
    expect(marginMapSteps(job, placing, { count: 20 }).next().value).toMatchObject({ done: 1 });
  });

  test("is refused under a stop and where nothing can be computed", () => {
    const stopped: Job = {
      ...job,
      floor: { ...job.floor, postTension: { known: true, value: "suspected", basis: { kind: "stated" } } },
    };
    const answer = marginMap(stopped, placing);
    expect(isUnable(answer) && answer.reason).toContain("false comfort");
    const blind: Job = { ...job, lift: { ...job.lift, rated: { known: false } } };
    expect(isUnable(marginMap(blind, placing))).toBe(true);
    expect(isUnable(marginMap(job, placeLift(stopped)))).toBe(true);
  });

  test("the anchors are never better off nearer to a lone edge", () => {
    const bare: Job = { ...job, floor: { ...job.floor, joints: [] } };
    const anchorsAt = (inches: number): number => {
      const left = { x: (inches + 7.25) * IN, y: 150 * IN }; // outer row this far from the left edge
      const position = { left, right: { x: left.x + 128 * IN, y: left.y } };
      return Math.max(
        ...assess(jobAt(bare, { position }))
          .margin.checks.filter(
            ({ group, weight, concrete }) => group === "anchors" && weight === "limit" && concrete === "cracked",
          )
          .map(({ ratio }) => ratio),
      );
    };
    const ratios = [24, 10, 6, 4].map(anchorsAt);
    for (const [i, ratio] of ratios.slice(1).entries()) expect(ratio).toBeGreaterThanOrEqual(ratios[i]! - 1e-9);
    expect(ratios.at(-1)!).toBeGreaterThan(ratios[0]!);
  });
});
