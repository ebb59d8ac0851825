import { readFileSync } from "node:fs";
import { adviseHit, readHit } from "@floorworthy/assess/hit";
import { fromBase } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

/* An invented case with an experienced installer's decision, worked by hand: common practice, no published source. */
const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");

const job = (holeDepth: string) => {
  const read = readJob(load("11-drill-meets-steel.yaml"), {
    name: "11",
    load: (file) => load(file).replace("diameter: 3/4 in", `diameter: 3/4 in\n      holeDepth: ${holeDepth}`),
  });
  if (!read.ok) throw new Error(read.issues.map((i) => i.message).join("\n"));
  return read.job;
};

test("hole R4 of 8 stops at 2.5 in on a bar: accept if the bar is cut with consent, or the column shifts", () => {
  const shop = job("5 1/2 in");
  const hit = readHit(shop, { hole: "R4", depth: "2.5 in", met: "bar" });
  if (!("hole" in hit)) throw new Error(JSON.stringify(hit));
  const advice = adviseHit(shop, hit);
  expect(advice.verdict).toBe("accept-if");
  expect(advice.reasons[0]).toMatch(/^Not post-tensioned \(documented, drawings\)/);
  expect(advice.ways[0]).toMatchObject({ id: "cut-bar", state: "ask-first" });
  // "usually 11 in away": two depths of a 5 1/2-in hole
  const apart = advice.ways.find((w) => w.id === "shift-open")!.terms[0]!;
  expect(fromBase(apart.value * 25.4, "in")).toBeCloseTo(11, 9);
  expect(advice.never.join(" ")).toMatch(/short anchor.*left out.*wanders.*ovalled/i);
});
