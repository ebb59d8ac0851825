/*
 * What is decided with what is known of a standing floor: invented floors, the decision of an experienced installer.
 * Common practice, no published source, unless named.
 */
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { answerFor, judgedWithMargin, pageLine } from "./standing-floor.ts";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const scenario = (name: string) => {
  const read = readJob(load(name), { name, load });
  if (!read.ok) throw new Error(name);
  return assess(read.job);
};
const readings = (...rows: string[]): { readings: string } => ({
  readings: rows.map((r) => `\n    - {${r}}`).join(""),
});
const fourAt = (near: string, inches: number[]): string[] => inches.map((t) => `near: ${near}, thickness: ${t} in`);

describe("thickness", () => {
  test("a sound floor is accepted", () => expect(judgedWithMargin().outcome).toBe("accept"));

  test("the mean of nine holes, one at the thick edge, is wrong: the lowest less 1/4 in counts, and the edge is told", () => {
    const answer = scenario("02-four-inches-that-is-not.yaml");
    expect(pageLine(answer, "thickness").demand?.value).toBeCloseTo(2.75, 6);
    const [left, right, slab] = answer.survey!.thickness.groups;
    expect(left!.terms[0]!.value).toBeCloseTo((3.9 + 3.6 + 4.1 + 3.7) / 4, 4);
    expect(right!.terms[0]!.value).toBeCloseTo(3.2, 4);
    expect(slab!.count).toBe(8); // the ninth, at the door, is not among them
    expect(answer.survey!.thickness.refused.join()).toContain("thickened edge");
    expect(JSON.stringify([answer.page, answer.survey])).not.toMatch(/3\.81[12]/); // the mean of all nine
    expect(right!.more).toMatch(/not likely/);
  });

  test("two levels under one base are never averaged, hold the answer, and say so", () => {
    const answer = answerFor(readings(...fourAt("left", [7, 7.1, 11.9, 12.2]), ...fourAt("right", [7, 7.1, 7.2, 7.1])));
    expect(answer.outcome).toBe("hold");
    expect(pageLine(answer, "one-slab")).toMatchObject({ result: "not-shown" });
    expect(pageLine(answer, "one-slab").found).toMatch(
      /left base.*two levels, 2 readings.*7\.1 in or less and 2 of 11\.9 in/,
    );
    const group = answer.survey!.thickness.groups.find(({ name }) => name === "left base")!;
    expect(group.terms).toEqual([]);
    expect(group.unable?.reason).toMatch(/no mean or bound/);
  });

  test("the bit that dropped before its mark shows a ceiling, never a thickness", () => {
    const low = answerFor(readings("near: left, thickness: 4 in, end: dropped", ...fourAt("right", [7, 7.1])));
    expect(pageLine(low, "thickness")).toMatchObject({ result: "fails", found: "at most 4 in at the left base" });
    const high = answerFor(
      readings(...fourAt("left", [7, 7.1]), "near: left, thickness: 6 in, end: dropped", ...fourAt("right", [7, 7.1])),
    );
    expect(pageLine(high, "thickness").result).toBe("not-shown");
    expect(high.outcome).toBe("hold");
    expect(high.missing.map(({ id }) => id)).toContain("thickness");
  });

  test("a hole that ended in concrete counts as it is, and enters the bound as at least", () => {
    const answer = answerFor(
      readings(
        ...[1, 2, 3].map(() => "near: left, thickness: 5 in, end: still-concrete"),
        ...fourAt("right", [7, 7.1, 7.3]),
      ),
    );
    expect(pageLine(answer, "thickness").demand?.value).toBeCloseTo(5, 9);
    expect(answer.survey!.thickness.groups[0]).toMatchObject({ count: 3, open: 3 });
  });

  test("a reading away from the plate and near the slab's edge never helps", () => {
    const answer = answerFor(
      readings(
        'at: ["6 in", "154 in"], near: left, thickness: 12 in',
        ...fourAt("left", [7, 7.1]),
        ...fourAt("right", [7, 7.1]),
      ),
    );
    expect(answer.survey!.thickness.refused.join()).toMatch(/12 in read within 2 ft of the slab's edge/);
    expect(pageLine(answer, "thickness").demand?.value).toBeCloseTo(6.75, 6);
    const thin = answerFor(
      readings('at: ["6 in", "154 in"], near: left, thickness: 3 in', ...fourAt("left", [7]), ...fourAt("right", [7])),
    );
    expect(pageLine(thin, "thickness").demand?.value).toBeCloseTo(2.75, 6); // where it is the thinnest it counts
  });

  test.each([
    ["bonded-topping", "at least"],
    ["tile", "at least"],
  ])("%s is not slab: unknown, it leaves the thickness unknown; measured, it is taken off", (layer) => {
    const blind = answerFor({ layer });
    expect(pageLine(blind, "thickness").result).toBe("not-shown");
    expect(pageLine(blind, "thickness").why).toMatch(/only the slab under it carries/);
    const rows = ["left", "right"].flatMap((near) =>
      [7, 7.2].map((t) => `near: ${near}, thickness: ${t} in, layer: 1.5 in`),
    );
    const known = answerFor({ layer, ...readings(...rows) });
    expect(pageLine(known, "thickness").demand?.value).toBeCloseTo(5.25, 6);
    expect(known.conditions.join()).toMatch(/topping|tile/i);
  });

  test("a loose layer stops, and no statistics are shown under a stop", () => {
    const answer = answerFor({ layer: "screed" });
    expect(answer.outcome).toBe("refuse");
    expect(answer.survey).toBeUndefined();
  });

  test("a base half on an old pad is poured or shifted, one half on a footing goes to an engineer", () => {
    const zone = (kind: string): { zones: string } => ({
      zones: `[{name: old block, kind: ${kind}, thickness: {value: 14 in, basis: measured}, outline: [["40 in", "100 in"], ["81 in", "100 in"], ["81 in", "200 in"], ["40 in", "200 in"]]}]`,
    });
    const pad = answerFor(zone("pad"));
    expect(pageLine(pad, "one-slab")).toMatchObject({ result: "fails" });
    expect(pad.outcome).toBe("pour");
    const footing = answerFor(zone("footing"));
    expect(pageLine(footing, "footing").found).toMatch(/left base stands partly on old block/);
    expect(footing.outcome).toBe("refer");
  });
});

describe("strength", () => {
  test('a figure called "tensile" in the thousands is explained and never used', () => {
    const answer = judgedWithMargin({ strength: "{tensileAsPrinted: 3000 psi}" });
    const line = pageLine(answer, "strength");
    expect(line.result).toBe("not-shown");
    expect(line.why).toMatch(/"3000 psi tensile" cannot be/);
    expect(line.why).toMatch(/2,500 psi counts/);
    expect(answer.outcome).toBe("accept-if"); // seven inches carry it even at the default
    const thinner = judgedWithMargin({
      ...readings(...fourAt("left", [5]), ...fourAt("right", [5])),
      strength: "{tensileAsPrinted: 3000 psi}",
    });
    expect(thinner.outcome).toBe("hold");
    expect(thinner.sentence).toMatch(/the margin does not hold without it/);
  });

  test("nothing known: not shown, 2,500 psi counts, 2,000 where it dusts; ways to show it are named", () => {
    expect(answerFor({ strength: "" }).survey!.strength[0]!.worst / 0.006894757293168361).toBeCloseTo(2500, 6);
    const dusty = answerFor({ strength: "", surface: "dusts" });
    expect(dusty.survey!.strength[0]!.worst / 0.006894757293168361).toBeCloseTo(2000, 6);
    expect(pageLine(dusty, "strength").why).toMatch(/delivery tickets.*three cores/);
  });

  test("a rebound hammer shows no strength, whatever it reads", () => {
    const answer = answerFor({ strength: "{rebound: [6000 psi, 6200 psi, 5900 psi, 6100 psi]}" });
    const line = pageLine(answer, "strength");
    expect(line.result).toBe("not-shown");
    expect(line.why).toMatch(/never a strength/);
    expect(line.why).toMatch(/2,500 psi counts/);
    const uneven = answerFor({ strength: "{rebound: [3000 psi, 6200 psi, 5900 psi, 4100 psi]}" });
    expect(pageLine(uneven, "strength").why).toMatch(/not one concrete/);
  });

  test("two cores give no bound and say how many are lacking; a very weak one rules the strength out", () => {
    const two = answerFor({
      strength:
        "{cores: [{strength: 4200 psi, diameter: 4 in, length: 8 in, moisture: soaked}, {strength: 4400 psi, diameter: 4 in, length: 8 in, moisture: soaked}]}",
    });
    expect(pageLine(two, "strength")).toMatchObject({ result: "not-shown" });
    expect(pageLine(two, "strength").why).toMatch(/at least three are needed.*so 1 more/);
    const weak = answerFor({
      strength: "{cores: [{strength: 1500 psi, diameter: 4 in, length: 8 in, moisture: as-received}]}",
    });
    expect(pageLine(weak, "strength").result).toBe("fails");
  });

  test("two cores do not throw away the tickets; three weak ones outweigh them", () => {
    const core = (psi: number): string => `{strength: ${psi} psi, diameter: 4 in, length: 8 in, moisture: as-received}`;
    const papers = "specified: {value: 4000 psi, basis: documented}, tickets: in-hand";
    const two = answerFor({ strength: `{${papers}, cores: [${core(4100)}, ${core(4300)}]}` });
    expect(pageLine(two, "strength")).toMatchObject({ result: "meets", found: "4,000 psi" });
    const three = answerFor({ strength: `{${papers}, cores: [${core(2500)}, ${core(2600)}, ${core(2550)}]}` });
    expect(pageLine(three, "strength").result).toBe("fails");
    expect(pageLine(three, "strength").why).toMatch(/fall short of what else is known/);
  });

  test("a core taken in a pad says nothing of the slab", () => {
    const pad = `[{name: far pad, kind: pad, thickness: 12 in, outline: [["0 in", "0 in"], ["40 in", "0 in"], ["40 in", "40 in"], ["0 in", "40 in"]]}]`;
    const cores = [5000, 5100, 5200].map(
      (s) => `{strength: ${s} psi, diameter: 4 in, length: 8 in, moisture: as-received, at: ["20 in", "20 in"]}`,
    );
    const answer = answerFor({ zones: pad, strength: `{cores: [${cores.join(", ")}]}` });
    expect(pageLine(answer, "strength").result).toBe("not-shown");
  });
});

describe("cracks, joints and pipes", () => {
  const crack = (more: string, y = 160): { cracks: string } => ({
    cracks: `[{name: C1, line: [["40 in", "${y} in"], ["71 in", "${y} in"]]${more ? `, ${more}` : ""}}]`,
  });
  test("a hairline beside the base is watched, not an edge, where the page has no line on cracks", () => {
    const answer = answerFor(crack("width: 0.005 in, step: 0 in"));
    expect(pageLine(answer, "crack")).toMatchObject({ result: "meets", found: "only hairlines: C1" });
    expect(answer.conditions.join()).toMatch(/Mark the ends of C1/);
    expect(answer.outcome).toBe("accept-if"); // no margin in this job
  });
  test("without a measured step or width it is an edge, and what would tell is asked", () => {
    const answer = answerFor(crack(""));
    expect(pageLine(answer, "crack").result).toBe("fails");
    expect(pageLine(answer, "crack").found).toMatch(/crack C1/);
    const asked = answer.missing.find(({ id }) => id === "cracks")!;
    expect(asked).toMatchObject({ worst: "refer", best: "accept-if", costClass: "free", risk: "none" });
  });
  test("a step or growth near a base is for an engineer; growth far away holds", () => {
    expect(answerFor(crack("width: 0.02 in, step: 0.1 in")).outcome).toBe("refer");
    const seen = "width: 0.03 in, step: 0 in, seen: [{on: 2026-06-01, width: 0.02 in}]";
    const near = answerFor(crack(seen));
    expect(near.outcome).toBe("refer");
    expect(near.reasons[0]).toMatch(/it grows: 0\.01 in wider in 122 days since 2026-06-01/);
    expect(answerFor(crack(seen, 20)).outcome).toBe("hold");
    expect(answerFor(crack("width: 0.01 in, step: 0 in, seen: [{on: 2026-06-01, width: 0.01 in}]", 20)).outcome).toBe(
      "accept-if",
    );
  });
  test("a saw cut under a plate is found though every anchor keeps a small distance", () => {
    const answer = answerFor({ joints: "[{name: J1, y: 155.5 in}]" });
    expect(pageLine(answer, "under-plate").found).toMatch(/saw cut J1 runs under the left base plate/);
    const near = answer.survey!.distances.find(({ side, kind }) => side === "left" && kind === "joint")!;
    expect(near.to).toBe("saw cut J1");
    expect(near.plate?.value).toBe(0);
    expect(near.anchor!.distance.value).toBeCloseTo(1.5, 6);
  });
  test("located tubes: too near is a shift, drawn and clear is fine, located and not drawn holds, not located stops", () => {
    const pipes = (x: number): Record<string, string> => ({
      heat: "located",
      pipes: `[{name: loop 1, kind: heating, line: [["${x} in", "10 in"], ["${x} in", "300 in"]], depth: 2 in}]`,
    });
    const hit = answerFor(pipes(75));
    expect(pageLine(hit, "pipe")).toMatchObject({ result: "fails" });
    expect(pageLine(hit, "pipe").found).toMatch(/1\.5 in from anchor L\d to the heating tube loop 1/);
    expect(hit.outcome).toBe("shift");
    expect(pageLine(answerFor(pipes(144)), "pipe").result).toBe("meets");
    expect(answerFor({ heat: "located" }).outcome).toBe("hold");
    expect(answerFor({ heat: "not-located" }).stops.map(({ id }) => id)).toContain("pipes-not-located");
  });
});

describe("what to find out next", () => {
  test("tendons suspected or a room below: no hole, no statistics, no settling by drilling", () => {
    for (const name of ["06-stamp-by-the-door.yaml", "07-room-below.yaml"]) {
      const answer = scenario(name);
      expect(answer.missing.every(({ risk }) => risk === "none")).toBe(true);
      expect(answer.survey).toBeUndefined();
      expect(answer.outcome).toBe("refuse");
    }
    const suspected = answerFor({ postTension: "suspected", strength: "", readings: "" });
    expect(suspected.missing.map(({ how }) => how).join()).not.toMatch(/drill|core|hole/);
  });
  test("only the strength is open: it alone settles", () => {
    const answer = judgedWithMargin({ strength: "" });
    expect(answer.settling).toMatchObject({ facts: ["strength"], outcomeWorst: "pour", outcomeBest: "accept" });
  });
  test("pipes nobody asked about do not hold an accept back: locating them is a condition", () => {
    const answer = judgedWithMargin({ utilities: "" });
    expect(answer.outcome).toBe("accept");
    expect(answer.conditions.join()).toMatch(/located before the first hole/);
  });
  test("where the slab is too thin anyhow, nothing else is worth finding out", () => {
    const answer = answerFor({ ...readings(...fourAt("left", [3]), ...fourAt("right", [3])), strength: "" });
    expect(answer.settling?.facts).toEqual([]);
    expect(answer.settling?.sentence).toMatch(/No answer.*turns it: pour/);
  });
});
