/** When the drill is stopped: stop rules before ways, distances kept, no comfort where it must stop. Common practice, no source. */
import { assess } from "@floorworthy/assess";
import { adviseHit, type Hit } from "@floorworthy/assess/hit";
import { distance } from "@floorworthy/engine/geometry";
import { type Choice, type Job, unknown } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { jobOf, known } from "../installing/jobs.ts";

const job = jobOf("steel-in-the-way");
const hit: Hit = { hole: "R4", depth: 2.5 * 25.4, met: "bar", owner: "not-asked" };
const is = <T extends string>(value: T): Choice<T> => ({ known: true, value, basis: { kind: "stated" } });

const advice = adviseHit(job, hit);

describe("one bar in a slab on the ground", () => {
  test("ways: cut it when the owner agrees, or shift the whole lift; each with the group's ratio", () => {
    expect(advice.verdict).toBe("accept-if");
    expect(advice.reasons[0]).toMatch(/^Not post-tensioned/);
    expect(advice.ways.map((w) => [w.id, w.state])).toEqual([
      ["cut-bar", "ask-first"],
      ["shift-filled", "open"],
      ["shift-open", "open"],
    ]);
    for (const way of advice.ways) expect(way.check!.ratio).toBeGreaterThan(0);
    expect(advice.never.join(" ")).toMatch(/short anchor.*left out.*wanders/i);
  });

  test("new holes keep one hole depth from filled, two from open abandoned holes, also from those drilled before", () => {
    const old = ["R4", "L1", "L2"].map((id) => ({
      at: assess(job)
        .layout.bases.flatMap((b) => b.anchors)
        .find((a) => a.id === id)!.at,
      depth: id === "L2" ? 5.375 * 25.4 : 5.25 * 25.4,
    }));
    for (const [id, depths] of [
      ["shift-filled", 1],
      ["shift-open", 2],
    ] as const) {
      const way = advice.ways.find((w) => w.id === id)!;
      const moved = assess({ ...job, position: way.to! });
      for (const { at } of moved.layout.bases.flatMap((b) => b.anchors))
        for (const hole of old) expect(distance(at, hole.at)).toBeGreaterThanOrEqual(depths * hole.depth - 0.01);
      expect(["accept", "accept-if"]).toContain(moved.outcome);
      const worst = moved.margin.checks
        .filter((c) => c.group === "anchors" && c.weight === "limit" && c.concrete !== "uncracked")
        .map((c) => c.ratio);
      expect(way.check!.ratio).toBeCloseTo(Math.max(...worst), 9);
    }
  });

  test("the bar stays where its owner refuses, where a second one was met, and where the steel is a pad's", () => {
    const state = (of: Job, owner: Hit["owner"] = "agrees") => adviseHit(of, { ...hit, owner }).ways[0]!;
    expect(state(job).state).toBe("open");
    expect(state(job, "refuses").state).toBe("closed");
    const record = { ...job.installation!.holes[0]!, anchor: "R5", met: is("bar"), depth: known(60) };
    const twice = { ...job, installation: { ...job.installation!, holes: [...job.installation!.holes, record] } };
    expect(state(twice)).toMatchObject({ state: "closed", check: undefined });
    const { x, y } = job.position!.right;
    const pad = {
      name: "right pad",
      kind: "pad" as const,
      state: "standing" as const,
      outline: [-700, 700].flatMap((dy) => [-700, 700].map((dx) => ({ x: x + dx * Math.sign(dy), y: y + dy }))),
      thickness: known(300),
      sideSlope: 0,
      tied: is("cast-with"),
      strength: unknown,
      poured: undefined,
    };
    expect(state({ ...job, floor: { ...job.floor, zones: [pad] } }).state).toBe("closed");
  });
});

describe("stops: no way, no ratio", () => {
  const { floor } = job;
  const box = [0, 12000].flatMap((y) => (y ? [9000, 0] : [0, 9000]).map((x) => ({ x, y })));
  const footing = {
    name: "footing",
    kind: "footing" as const,
    state: "standing" as const,
    outline: box,
    thickness: unknown,
    sideSlope: 0,
    tied: unknown,
    strength: unknown,
    poured: undefined,
  };
  test.each<[string, Job, Partial<Hit>, RegExp]>([
    ["a tendon", job, { met: "tendon" }, /tendon/],
    ["a conduit", job, { met: "conduit" }, /conduit/],
    ["a tube", job, { met: "tube" }, /tube/],
    ["metal of unknown kind", job, { met: "metal" }, /Nobody knows what metal/],
    ["a hollow", job, { met: "void" }, /hollow/],
    ["a stamped slab", { ...job, floor: { ...floor, postTension: is("stamped") } }, {}, /post-tensioned/],
    [
      "post-tensioning not ruled out",
      { ...job, floor: { ...floor, postTension: unknown } },
      {},
      /ruled out post-tensioning/,
    ],
    ["a suspended floor", { ...job, floor: { ...floor, kind: is("suspended") } }, {}, /room or a void below/],
    ["lines not located", { ...job, floor: { ...floor, utilities: is("not-located") } }, {}, /nobody knows where/],
    ["lines not spoken of", { ...job, floor: { ...floor, heat: unknown } }, {}, /ruled out heating tubes/],
    ["a footing", { ...job, floor: { ...floor, zones: [footing] } }, {}, /footing/],
  ])("%s", (_, of, change, reason) => {
    const answer = adviseHit(of, { ...hit, owner: "agrees", ...change });
    expect(answer.verdict).not.toBe("accept-if");
    expect(answer.ways).toEqual([]);
    expect(answer.reasons[0]).toMatch(reason);
    expect(JSON.stringify(answer)).not.toMatch(/"ratio"/);
  });
});
