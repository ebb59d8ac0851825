import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { type Order, orderFor } from "@floorworthy/assess/order";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

/* Volumes worked by hand with plain geometry: common practice, no published source. Within 5 %. */
const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");

const jobNamed = (name: string) => {
  const read = readJob(load(name), { name, load });
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.line}: ${issue.message}`).join("\n"));
  return read.job;
};

const orderOf = (name: string, remedy?: string): Order => {
  const job = jobNamed(name);
  const order = orderFor(job, assess(job), remedy === undefined ? {} : { remedy });
  if (isUnable(order)) throw new Error(order.reason);
  return order;
};

const within5 = (value: number, hand: number) => expect(Math.abs(value / hand - 1)).toBeLessThan(0.05);

test("four inches that is not: one strip 60 × 184 × 12 in is 2.84 cu yd, 3.04 with 7 %", () => {
  const order = orderOf("02-four-inches-that-is-not.yaml");
  expect(order.pours).toBe("strip");
  within5(order.net.value, 2.84);
  within5(order.withWaste.value, 3.04);
  expect(order.ordered.value).toBe(3.25); // the next quarter of a yard a plant sells
});

test("the same floor with two pads 72 × 72 × 12 in: 2.67 cu yd", () => {
  within5(orderOf("02-four-inches-that-is-not.yaml", "separate-pads").net.value, 2.67);
});

test("new heated shop: the strip 60 × 190 × 12 in is 2.93 cu yd gross, 3.14 with 7 %", () => {
  const order = orderOf("05-new-heated-shop.yaml");
  const strip = order.parts.find((part) => part.name === "strip")!;
  within5(strip.term!.value, 2.93);
  within5(strip.term!.value * 1.07, 3.14);
  // and the slab around it, 5 in
  within5(order.net.value, (32 * 48 * 5) / 12 / 27 + (190 * 60 * 7) / 1728 / 27);
});

test("new heated shop: no cut over the strip or within 24 in of a base, depth 1 1/4 in, panels at most 15 ft elsewhere", () => {
  const job = jobNamed("05-new-heated-shop.yaml");
  const plan = planJobJoints(job, assess(job));
  if (isUnable(plan)) throw new Error(plan.reason);
  const inch = 25.4;
  const strip = { x0: 97 * inch, x1: 287 * inch, y0: 258 * inch, y1: 318 * inch };
  for (const { from, to } of plan.lines) {
    const crosses =
      Math.max(from.x, to.x) > strip.x0 &&
      Math.min(from.x, to.x) < strip.x1 &&
      Math.max(from.y, to.y) > strip.y0 &&
      Math.min(from.y, to.y) < strip.y1;
    expect(crosses).toBe(false);
  }
  for (const { toAnchor } of plan.lines) expect(toAnchor!.value).toBeGreaterThan(24);
  expect(plan.depth!.value).toBeGreaterThanOrEqual(1.25);
  expect(plan.depth!.value).toBeLessThanOrEqual(1.625);
  const large = plan.panels.filter(({ width, length }) => Math.max(width, length) > 15 * 12 * inch + 1);
  expect(large.length).toBeLessThanOrEqual(1);
  expect(plan.unmet.every(({ because }) => because === "the strip")).toBe(true);
});

test("nine cold days: the pads stand, nothing is ordered; poured again they take 54 bags each pair, 1.2 cu yd", () => {
  const job = jobNamed("09-nine-cold-days.yaml");
  const nothing = orderFor(job, assess(job));
  expect(isUnable(nothing) && nothing.reason).toMatch(/No concrete is to be poured/);
  const again = {
    ...job,
    floor: { ...job.floor, zones: job.floor.zones.map((zone) => ({ ...zone, state: "proposed" as const })) },
  };
  const order = orderFor(again, assess(again));
  if (isUnable(order)) throw new Error(order.reason);
  within5(order.net.value, 1.2);
  expect(order.bags.net.value).toBe(54);
  // dowels: 48 in sides, 12 in apart, 6 in off the corners: 4 a side, 32 in all
  expect(order.lines.find(({ id }) => id === "dowels")!.buy.value).toBe(32);
});

test("truck lift: strip 72 × 220 × 14 in, 4.75 cu yd, 5.1 with waste, 214 bags before it, saw 49 ft, #5 bars", () => {
  const order = orderOf("12-truck-lift-in-the-shop.yaml");
  within5(order.net.value, 4.75);
  within5(order.withWaste.value, 5.1);
  expect(order.bags.bag).toBe("80 lb");
  expect(order.bags.net.value).toBe(214);
  expect(order.bags.better).toBe("truck");
  within5(order.lines.find(({ id }) => id === "saw-out")!.takes.value, 49);
  expect(order.lines.some(({ what }) => what === "#5 bars")).toBe(true);
  expect(order.mats.map(({ depth }) => Math.round(depth! / 25.4))).toEqual([2, 2, 11, 11]);
  expect(order.mix.find(({ id }) => id === "strength")!.words).toBe("at least 4,000 psi");
  expect(order.net.value).toBeCloseTo(toBase((72 * 220 * 14) / 1728, "ft³") / toBase(1, "yd³"), 6);
});

test("a stamped slab and a room below get no order and no joint plan", () => {
  for (const name of ["06-stamp-by-the-door.yaml", "07-room-below.yaml"]) {
    const job = jobNamed(name);
    const assessment = assess(job);
    expect(isUnable(orderFor(job, assessment))).toBe(true);
    expect(isUnable(planJobJoints(job, assessment))).toBe(true);
  }
});
