import { readFileSync } from "node:fs";
import { assess, type Outcome } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { afterAll, describe, expect, test } from "vitest";

/*
 * Invented cases with the decision an experienced installer would take, worked by hand with the simplifications of the
 * trade: common practice, no published source. Same outcome, same first reason; volumes within 5 %.
 */
const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");

const answerTo = (name: string) => {
  const read = readJob(load(name), { name, load });
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.line}: ${issue.path} ${issue.message}`).join("\n"));
  return assess(read.job);
};

const rows: string[] = [];
afterAll(() => console.log(["scenario | page | margin | outcome", ...rows].join("\n")));

interface Expected {
  readonly outcome: Outcome;
  readonly page: string;
  readonly margin?: readonly string[];
  readonly firstReason: RegExp;
}

const cases: Record<string, Expected> = {
  "01-records-in-hand.yaml": {
    outcome: "accept",
    page: "meets",
    margin: ["ample", "enough"],
    firstReason: /meets every line/,
  },
  "02-four-inches-that-is-not.yaml": {
    outcome: "pour",
    page: "fails",
    margin: ["short"],
    firstReason: /^Thickness.*2\.75 in at the right base/,
  },
  "04-saw-cut-in-the-way.yaml": { outcome: "shift", page: "fails", firstReason: /saw cut/ },
  "05-new-heated-shop.yaml": {
    outcome: "pour",
    page: "not-shown",
    margin: ["ample", "enough"],
    firstReason: /As planned/,
  },
  "06-stamp-by-the-door.yaml": {
    outcome: "refuse",
    page: "not-judged",
    margin: ["not-computed"],
    firstReason: /post-tensioned/,
  },
  "07-room-below.yaml": { outcome: "refuse", page: "not-judged", margin: ["not-computed"], firstReason: /below/ },
  "09-nine-cold-days.yaml": { outcome: "wait", page: "fails", firstReason: /Days.*9 days/ },
  "10-two-years-on.yaml": {
    outcome: "out-of-service",
    page: "not-judged",
    margin: ["not-computed"],
    firstReason: /^L1 slips: 0\.126 in .* it moves more from round to round/,
  },
  "12-truck-lift-in-the-shop.yaml": { outcome: "pour", page: "fails", firstReason: /^Thickness.*5\.55 in/ },
};

describe("the decisions of an experienced installer", () => {
  for (const [name, expected] of Object.entries(cases)) {
    test(name, () => {
      const answer = answerTo(name);
      rows.push(`${name} | ${answer.page.verdict} | ${answer.margin.verdict} | ${answer.outcome}: ${answer.sentence}`);
      expect(answer.outcome).toBe(expected.outcome);
      expect(answer.page.verdict).toBe(expected.page);
      expect(answer.reasons[0]).toMatch(expected.firstReason);
      if (expected.margin) expect(expected.margin).toContain(answer.margin.verdict);
    });
  }

  test("records in hand: slab stress at pick-up within 15 % of the hand-worked 292 psi", () => {
    const { checks, information } = answerTo("01-records-in-hand.yaml").margin;
    const crack = checks.find((check) => check.id === "slab-first-crack")!;
    expect(Math.abs(crack.demand.value / 292 - 1)).toBeLessThan(0.15);
    // As if the beam were missing the hand-worked figure is MOR/stress 0.95 on a 4-in mesh; ours resolves the toe of the
    // plate and finds more stress there (0.80). Both say the same: it would crack.
    const untied = information.find((check) => check.id === "information-slab-first-crack")!;
    expect(untied.ratio).toBeGreaterThan(1.4 / 0.95);
  });

  test("saw cut in the way: 2.5 to 3.0 in toward the door; with a truck 4 in longer there is no place", () => {
    expect(answerTo("04-saw-cut-in-the-way.yaml").sentence).toMatch(/2\.5 in toward the door/);
    const longer = load("04-saw-cut-in-the-way.yaml").replace("220 in", "224 in");
    const read = readJob(longer, { name: "longer", load });
    expect(read.ok && assess(read.job).outcome).toBe("pour");
  });

  test("nine cold days: the maker's 28 days end on 3 March", () => {
    expect(answerTo("09-nine-cold-days.yaml").sentence).toContain("2026-03-03");
  });

  test("the mean of all nine holes is never used", () => {
    const line = answerTo("02-four-inches-that-is-not.yaml").page.lines.find((l) => l.id === "thickness")!;
    expect(line.demand?.value).toBeCloseTo(2.75, 6);
    expect(line.why).toContain("thickened edge");
  });

  test.each([
    ["02-four-inches-that-is-not.yaml", 3.04],
    ["12-truck-lift-in-the-shop.yaml", 5.1],
  ])("%s: strip to order, cubic yards", (name, printed) => {
    const strip = answerTo(name).remedies.find((remedy) => remedy.id === "strip")!;
    expect(Math.abs(strip.volume!.value / printed - 1)).toBeLessThan(0.05);
  });

  test("while tendons are not ruled out, that comes before any hole", () => {
    const { missing } = answerTo("02-four-inches-that-is-not.yaml");
    const byDrilling = missing.filter(({ id }) => id === "strength" || id === "thickness");
    expect(byDrilling.length).toBeGreaterThan(0);
    for (const { how } of byDrilling) expect(how).toMatch(/^no hole before tendons and tubes are ruled out/);
  });

  test("no plain accept while the margin cannot be computed", () => {
    const text = load("01-records-in-hand.yaml");
    const blind = (name: string): string =>
      name === "k10t.lift.yaml"
        ? load(name).replace(/effectiveEmbedment: .*/, "effectiveEmbedment: unknown")
        : load(name);
    const read = readJob(text, { name: "blind", load: blind });
    const answer = read.ok ? assess(read.job) : undefined;
    expect(answer?.page.verdict).toBe("meets");
    expect(answer?.margin.verdict).toBe("not-computed");
    expect(answer?.outcome).toBe("accept-if");
  });

  test("where the tool must stop it computes no figure", () => {
    for (const name of ["06-stamp-by-the-door.yaml", "07-room-below.yaml"]) {
      const { margin, remedies, outcome, missing, page } = answerTo(name);
      expect(page.lines.filter((line) => line.result === "meets")).toEqual([]);
      expect(missing.map(({ how }) => how).join(" "), "no hole is proposed").not.toMatch(/drill|core|hole/);
      expect(margin.checks).toEqual([]);
      expect(margin.cases).toEqual([]);
      expect(remedies).toEqual([]);
      expect(outcome).toBe("refuse");
    }
  });
});
