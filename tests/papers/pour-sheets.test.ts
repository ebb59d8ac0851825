import type { Assessment } from "@floorworthy/assess";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { orderFor } from "@floorworthy/assess/order";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { contractorSheet, type Drawing, jointSheet, onPaper, type Paper, readyMixSheet } from "@floorworthy/papers";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import DxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import { assessmentOf, choice, known, newPour, standing, standingAssessment, strip } from "./fixtures.ts";
import { dimensionsOf, groundOf, overlaps, strays, wordsOf } from "./reading-back.ts";

type Draw = typeof contractorSheet;
const drawings: readonly (readonly [string, Draw])[] = [
  ["contractor", contractorSheet],
  ["joints", jointSheet.draw],
  ["ready-mix", readyMixSheet.draw],
];

const cases = (
  [
    ["new pour", newPour],
    ["strip in an old floor", strip],
    [
      "fibre, mesh and a post",
      {
        ...newPour,
        bay: {
          ...newPour.bay,
          posts: [
            {
              name: "steel post",
              outline: [
                { x: 3600, y: 5600 },
                { x: 3800, y: 5600 },
                { x: 3800, y: 5800 },
                { x: 3600, y: 5800 },
              ],
            },
          ],
        },
        floor: { ...newPour.floor, bars: [], reinforcement: choice("mesh") },
        pour: { ...newPour.pour!, fibre: known(3) },
      },
    ],
  ] as readonly (readonly [string, Job])[]
).flatMap(([name, job]) => drawings.map(([sheet, draw]) => [`${sheet}: ${name}`, job, draw] as const));

const pageOf = (draw: Draw, job: Job, assessment: Assessment, paper: Paper = "letter"): Drawing => {
  const pages = draw(job, assessment, { date: "2026-05-05", paper });
  if (isUnable(pages)) throw new Error(pages.reason);
  expect(pages).toHaveLength(1);
  return pages[0]!;
};

describe.each(cases)("%s", (_, job, draw) => {
  test.each(["letter", "a4"] as const)("one %s page, nothing outside the margin, no words over words", (paper) => {
    const page = pageOf(draw, job, assessmentOf(job), paper);
    expect(strays(page, 7.9)).toEqual([]);
    expect(overlaps(page)).toEqual([]);
    const text = wordsOf(page).join(" ");
    expect(text).not.toMatch(/NaN|undefined|Infinity|approved|certified|sealed/i);
    expect(text).toContain("It is not an engineer's design or approval.");
    expect(Math.min(...onPaper(page).flatMap((m) => (m.kind === "text" ? [m.size] : [])))).toBeGreaterThanOrEqual(1.69);
  });
});

describe("what they say is what was planned and ordered", () => {
  const assessment = assessmentOf(newPour);
  const plan = planJobJoints(newPour, assessment);
  const order = orderFor(newPour, assessment);
  if (isUnable(plan) || isUnable(order)) throw new Error("no plan");

  test("the contractor's plan shows the lines of the joint plan, at their places, and their distances from the walls", () => {
    const ground = groundOf(pageOf(contractorSheet, newPour, assessment));
    const drawn = ground.items.flatMap((item) => (item.kind === "line" && item.tag === "joints-to-cut" ? [item] : []));
    expect(drawn.map(({ from, to }) => ({ from, to }))).toEqual(plan.lines.map(({ from, to }) => ({ from, to })));
    const figures = dimensionsOf(ground);
    for (const { from, to } of plan.lines) {
      const axis = Math.abs(from.x - to.x) < 1 ? "x" : "y";
      expect(figures.some((d) => d.axis === axis && Math.abs(d.to[axis] - from[axis]) < 0.01)).toBe(true);
    }
  });

  test("no bar is drawn in a window", () => {
    const ground = groundOf(pageOf(contractorSheet, newPour, assessment));
    const windows = ground.items.flatMap((item) =>
      item.tag === "windows" && item.kind === "polygon" ? [item.points] : [],
    );
    const bars = ground.items.flatMap((item) => (item.tag === "bars" && item.kind === "line" ? [item] : []));
    expect(windows).toHaveLength(2);
    expect(bars.length).toBeGreaterThan(8);
    for (const { from, to } of bars)
      for (const w of windows) {
        const [x0, x1] = [Math.min(...w.map((p) => p.x)), Math.max(...w.map((p) => p.x))];
        const [y0, y1] = [Math.min(...w.map((p) => p.y)), Math.max(...w.map((p) => p.y))];
        const inside =
          Math.max(from.x, to.x) > x0 + 1e-6 &&
          Math.min(from.x, to.x) < x1 - 1e-6 &&
          Math.max(from.y, to.y) > y0 + 1e-6 &&
          Math.min(from.y, to.y) < y1 - 1e-6;
        expect(inside).toBe(false);
      }
  });

  test("contractor and dispatcher read the same volume, bags, strength and loads", () => {
    const [contractor, dispatcher] = [contractorSheet, readyMixSheet.draw].map((draw) =>
      wordsOf(pageOf(draw, newPour, assessment)).join(" "),
    );
    for (const text of [contractor!, dispatcher!]) {
      expect(text).toContain(`${order.ordered.value.toFixed(2)} cu yd`);
      expect(text).toContain("4,000 psi");
      expect(text).toContain("72 bars of 20 ft");
    }
    expect(dispatcher).toContain("Water met cement"); // a row for each load, to fill in
  });

  test("every line of the joint plan has its row", () => {
    const text = wordsOf(pageOf(jointSheet.draw, newPour, assessment))
      .join(" ")
      .replace(/\s+/g, " ");
    for (const { name } of plan.lines) expect(text).toContain(` ${name} `);
    expect(text).toContain("midway between the lift's columns");
  });
});

describe("no sheet where the tool must stop", () => {
  const stop = { id: "x", outcome: "refuse", reason: "Tendons were seen.", next: "Ask an engineer." } as const;
  test.each(drawings)("%s", (_, draw) => {
    for (const job of [newPour, strip]) {
      const refused = draw(job, assessmentOf(job, { stops: [stop] }), { date: "2026-05-05", paper: "letter" });
      expect(isUnable(refused) && refused.reason).toContain("Tendons were seen.");
    }
  });
  test("nothing is ordered on hold, nor for a floor that stands and is accepted", () => {
    const options = { date: "2026-05-05", paper: "letter" } as const;
    expect(isUnable(readyMixSheet.draw(newPour, assessmentOf(newPour, { outcome: "hold" }), options))).toBe(true);
    expect(isUnable(readyMixSheet.draw(standing, standingAssessment, options))).toBe(true);
  });
});

describe("DXF, read back by another program's parser and compared with the drawing", () => {
  interface Entity {
    readonly type: string;
    readonly layer: string;
    readonly vertices?: readonly { readonly x: number; readonly y: number }[];
    readonly center?: { readonly x: number; readonly y: number };
    readonly radius?: number;
    readonly text?: string;
  }
  const layer = (tag: string) => tag.toUpperCase().replace(/[^A-Z0-9]+/g, "_");
  const point = ({ x, y }: { x: number; y: number }) => `${x.toFixed(2)} ${y.toFixed(2)}`.replaceAll("-0.00", "0.00");

  test.each([
    ["contractor, new pour", contractorSheet, newPour],
    ["joints, new pour", jointSheet.draw, newPour],
    ["contractor, strip in mm", contractorSheet, strip],
  ] as const)("%s: every line, outline and circle of the plan, at its place, on its layer, in mm", (_, draw, job) => {
    const page = pageOf(draw, job, assessmentOf(job));
    const ground = groundOf(page);
    const dxf = new DxfParser().parseSync(drawingToDxf(page, "plan"))!;
    expect(dxf.header.$INSUNITS).toBe(4);
    const entities = dxf.entities as unknown as readonly Entity[];
    const outlines = entities
      .filter((e) => e.type === "LWPOLYLINE")
      .map((e) => `${e.layer}: ${e.vertices!.map((v) => point({ x: v.x, y: 0 - v.y })).join(", ")}`);
    let lines = 0;
    for (const item of ground.items) {
      const points =
        item.kind === "line" ? [item.from, item.to] : item.kind === "polygon" && item.pen ? item.points : undefined;
      if (!points) continue;
      lines++;
      expect(outlines).toContain(`${layer(item.tag)}: ${points.map(point).join(", ")}`);
    }
    expect(lines).toBeGreaterThan(15);
    const words = entities.filter((e) => e.type === "TEXT").map((e) => e.text);
    for (const item of ground.items)
      if (item.kind === "text" || item.kind === "label") expect(words).toContain(item.words);
    const layers = Object.keys((dxf.tables.layer as { layers: object }).layers);
    for (const { tag } of ground.items) expect(layers).toContain(layer(tag));
    // nothing is drawn that is not in the drawing
    const tags = new Set([...ground.items.map(({ tag }) => layer(tag)), "0"]);
    const strangers = entities.filter((e) => !tags.has(e.layer)).map((e) => e.layer);
    expect([...new Set(strangers)].filter((name) => !["HATCH", "TICKS", "LEADERS"].includes(name))).toEqual([]);
  });
});
