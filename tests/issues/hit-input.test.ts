import { readHit } from "@floorworthy/assess/hit";
import { expect, test } from "vitest";
import { jobOf } from "../installing/jobs.ts";

const job = jobOf("steel-in-the-way");
const right = { hole: "R4", depth: "2 1/2 in", met: "bar" };
const mistakes = (change: Partial<typeof right> & { owner?: string }) => {
  const read = readHit(job, { ...right, ...change });
  return "hole" in read ? [] : read.map(({ about, message }) => `${about}: ${message}`);
};

test("what was typed rightly is read, the hole in any letters", () =>
  expect(readHit(job, { ...right, hole: " r4 ", owner: "agrees" })).toEqual({
    hole: "R4",
    depth: 63.5,
    met: "bar",
    owner: "agrees",
  }));

test("all mistakes at once, one message each", () => {
  const found = mistakes({ hole: "Q9", depth: "deep", met: "rock", owner: "perhaps" });
  expect(found.map((m) => m.split(":")[0])).toEqual(["hole", "depth", "met", "owner"]);
});

test.each([
  [{ hole: "R9" }, /There is no hole "R9".*L1, L2/],
  [{ hole: "" }, /There is no hole ""/],
  [{ depth: "2.5" }, /no unit/],
  [{ depth: "2 1/2 lb" }, /depth:/],
  [{ depth: "0 in" }, /more than nothing/],
  [{ depth: "-1 in" }, /more than nothing/],
  [{ depth: "5 1/4 in" }, /whole depth asked/],
  [{ depth: "14 in" }, /whole depth asked|more than the slab/],
  [{ met: "Rock" }, /Write one of: bar, tendon/],
  [{ owner: "yes" }, /Write agrees or refuses/],
])("%j", (change, message) => {
  const found = mistakes(change);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(message);
});

test("without a place of the columns no hole has a name, and nothing crashes", () => {
  const { position: _, ...rest } = job;
  const read = readHit({ ...rest, position: undefined }, right);
  expect("hole" in read ? [] : read.map((m) => m.message)).toEqual([expect.stringMatching(/no hole has a name yet/)]);
});
