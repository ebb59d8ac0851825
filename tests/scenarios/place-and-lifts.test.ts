/**
 * The place of the lift and which lift for the floor, in invented cases worked by hand with the rules of the trade: common
 * practice, no published source. Lengths in inches as the cases print them.
 */
import { readFileSync } from "node:fs";
import { judgeLifts, liftsOf } from "@floorworthy/assess/catalogue";
import { placeLift } from "@floorworthy/assess/place";
import { distance, type Point } from "@floorworthy/engine/geometry";
import { type Job, type Lift, readJob, readLift } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const jobOf = (name: string, change: (text: string) => string = (text) => text): Job => {
  const read = readJob(change(load(name)), { name, load });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const liftOf = (text: string): Lift => {
  const read = readLift(text, { name: "lift" });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.lift;
};
const IN = 25.4;

describe("the saw cut in the way", () => {
  const placing = placeLift(jobOf("04-saw-cut-in-the-way.yaml"));

  test("move 3 in toward the door, to a line at 157 in; 2.5 in is the least, 3.0 in the most", () => {
    expect(placing.answer).toBe("move");
    expect(placing.sentence).toMatch(/^Move it 3 in toward the door\. The smallest move is 2\.5 in toward the door\./);
    expect(placing.proposed!.position.left.y / IN).toBeCloseTo(157, 6);
    expect(Math.abs(placing.smallest!.dy / IN - 2.5)).toBeLessThan(0.001);
    const [along] = placing.ranges;
    expect(Math.abs(along!.from / IN - 2.5)).toBeLessThan(0.001);
    expect(Math.abs(along!.to / IN - 3)).toBeLessThan(0.001);
    expect(along!.heldBackBy.map(({ name }) => name)).toEqual(["J2"]);
    expect(along!.heldOnBy.map(({ part }) => part)).toEqual(["vehicle"]);
  });

  test("the reason is 3.5 in of the 6 the maker asks; behind the cut the walkway closes the window", () => {
    expect(placing.blockers).toHaveLength(1);
    expect(placing.blockers[0]).toMatchObject({ name: "J2", part: "anchors", standing: "maker", asked: 6 * IN });
    expect(placing.blockers[0]!.there / IN).toBeCloseTo(3.5, 3);
    const [closed] = placing.ways[0]!.closed;
    expect(closed!.blockers.map(({ name }) => name)).toEqual(["the walkway at the back"]);
    expect(closed!.blockers[0]!.there / IN).toBeCloseTo(-17.5, 2); // a nose at 36.5 where 54 are to be free
  });

  test("a truck 4 in longer has no place, and what closes it is named", () => {
    const longer = placeLift(
      jobOf("04-saw-cut-in-the-way.yaml", (text) => text.replace("220 in", "224 in")),
      {
        stands: ["as-wanted"],
      },
    );
    expect(longer.answer).toBe("nowhere");
    expect(longer.sentence).toContain("J2");
    expect(longer.proposed).toBeUndefined();
  });
});

const portable = liftOf(`
floorworthy: 1
lift:
  name: Fenlake Portable 6
  kind: scissor
  manual: in-hand
  fixing: loose
  rated: 6000 lb
  supports:
    - { id: left, at: [-30 in, 0 in], outline: { width: 8 in, depth: 70 in } }
    - { id: right, at: [30 in, 0 in], outline: { width: 8 in, depth: 70 in } }
  asks: { thickness: 4 in, strength: 3000 psi, slope: 1/8 in per ft }
`);

describe("which lift where the floor stops the drill", () => {
  test("stamped post-tensioned: no place is given, every anchored lift is refused, the portable is accepted if shown without drilling", () => {
    const job = jobOf("06-stamp-by-the-door.yaml");
    expect(placeLift(job).answer).toBe("stopped");
    expect(placeLift(job).ways).toEqual([]);
    const { findings } = judgeLifts(job, liftsOf(job, [portable, liftOf(load("k7t.lift.yaml"))]));
    expect(findings.map(({ name, outcome }) => [name, outcome])).toEqual([
      ["Fenlake Portable 6", "accept-if"],
      ["Kestwick 10T", "refuse"],
      ["Kestwick 7T", "refuse"],
    ]);
    const [first] = findings;
    expect(first!.margin).toBe("not-computed");
    expect(first!.sentence).toMatch(/at least 4 in.*at least 3,000 psi.*without drilling/);
    expect(first!.conditions.join(" ")).toMatch(/No hole of any kind/);
    expect(first!.conditions.join(" ")).toMatch(/the customer\s+was told/);
  });

  test("a room below: none until an engineer has looked", () => {
    const { findings } = judgeLifts(jobOf("07-room-below.yaml"), [portable, liftOf(load("b9f.lift.yaml"))]);
    expect(findings.map(({ standing, outcome }) => [standing, outcome])).toEqual([
      ["no", "refuse"],
      ["no", "refuse"],
    ]);
  });

  test("records in hand: those that may stand first, each group by rated load; none is judged at less than its rated load", () => {
    const job = jobOf("01-records-in-hand.yaml");
    const lifts = ["t18t", "b9f", "k7t"].map((name) => liftOf(load(`${name}.lift.yaml`)));
    const { findings, notes } = judgeLifts(job, liftsOf(job, lifts));
    const ranks = { "may-stand": 0, "after-move": 1, "not-yet": 2, no: 3 };
    for (const [i, next] of findings.slice(1).entries()) {
      const before = findings[i]!;
      const step = ranks[next.standing] - ranks[before.standing];
      expect(step).toBeGreaterThanOrEqual(0);
      if (step === 0 && before.rated.known && next.rated.known)
        expect(next.rated.value).toBeLessThanOrEqual(before.rated.value);
    }
    expect(findings[0]!.name).toBe("Kestwick 10T");
    const truck = findings.find(({ name }) => name === "Tarnley 18T")!;
    expect(truck).toMatchObject({ outcome: "pour", page: "fails" }); // 5.65 in of the 8 asked
    expect(truck.next.kind).toBe("pour");
    expect(notes.join(" ")).toContain("full rated load");
  });
});

describe("a bar in one of the holes", () => {
  // hole depth taken as 5.5 in: new holes two hole depths from the abandoned one
  const clear = 11 * IN;

  test("the column is shifted so that every new hole is 11 in from the abandoned one, by no more than it must", () => {
    const job = jobOf("12-truck-lift-in-the-shop.yaml", (text) =>
      text.replace(/file: \S+\.yaml/, "file: b12t.lift.yaml"),
    );
    const bare: Job = { ...job, floor: { ...job.floor, joints: [], zones: [] } };
    const { left, right } = bare.position!;
    const hole: Point = { x: right.x - 8.5 * IN, y: right.y + 7.5 * IN };
    const also = [
      { id: "old-hole", name: "abandoned hole R8", shape: { a: hole, b: hole }, clear: { anchors: clear } },
    ];
    const placing = placeLift(bare, { also, stands: ["as-wanted"] });
    expect(placing.answer).toBe("move");
    const pattern = bare.lift.anchors.holes.map(({ at }) => at);
    const least = (dx: number, dy: number): number =>
      Math.min(
        ...pattern.flatMap(({ x, y }) => [
          distance({ x: left.x + x + dx, y: left.y + y + dy }, hole),
          distance({ x: right.x - x + dx, y: right.y + y + dy }, hole),
        ]),
      );
    expect(least(placing.proposed!.dx, placing.proposed!.dy)).toBeGreaterThanOrEqual(clear - 0.01);
    const reach = placing.smallest!.distance - 0.2;
    for (let k = 0; k < 360; k++) {
      const angle = (k * Math.PI) / 180;
      for (const share of [0.3, 0.6, 0.9, 1])
        expect(least(share * reach * Math.cos(angle), share * reach * Math.sin(angle))).toBeLessThan(clear);
    }
  });
});
