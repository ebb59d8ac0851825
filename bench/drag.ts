/**
 * What one move of the pointer costs while something of the plan is dragged: reading the job's text, finding its things,
 * placing the names, and, when the file is written (at most every 120 ms), one place put back into the text.
 * The frame budget is 8 ms of script for a move, half of a frame of a 60 Hz screen. On two quiet
 * cores: a move 0.08 ms, a write 10 ms; what a browser makes of it, bench/opening.ts says. Run: npx tsx bench/drag.ts
 */
import { readdirSync, readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { writtenTree } from "@floorworthy/job/listing";
import { planLabels } from "../apps/web/src/plan/hand/labels.ts";
import { guidesOf, shift, snapped } from "../apps/web/src/plan/hand/move.ts";
import { thingsOf } from "../apps/web/src/plan/hand/things.ts";

const folder = new URL("../examples/", import.meta.url);
const jobs = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), "utf8") }))
  .map((job) => ({ ...job, count: thingsOf(writtenTree(job.text)).length }));
const largest = jobs.reduce((a, b) => (b.count > a.count ? b : a));

const LETTERS = 200;
const ROUNDS = 300;

const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;
const worst = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length * 0.95)]!;

let { text } = largest;
const moves: number[] = [];
const writes: number[] = [];
let things = thingsOf(writtenTree(text));
for (let i = 0; i < ROUNDS; i++) {
  const begun = performance.now();
  const lift = things.find(({ kind }) => kind === "lift")!;
  const by = snapped(lift.points, { x: (i % 7) * 9, y: (i % 5) * 11 }, 25.4, 60, guidesOf(things, lift.path));
  const held = shift(lift.points, by);
  planLabels(
    things.map((each) => (each === lift ? { ...each, points: held } : each)),
    LETTERS,
  );
  moves.push(performance.now() - begun);
  const writing = performance.now();
  text = lift.put(held, "inch-pound")(text);
  things = thingsOf(writtenTree(text));
  writes.push(performance.now() - writing);
}
console.log(`${largest.name}: ${largest.count} things, ${largest.text.length} characters`);
console.log(`a move: ${middle(moves).toFixed(2)} ms, 95 % under ${worst(moves).toFixed(2)} ms`);
console.log(
  `writing it and reading it back: ${middle(writes).toFixed(2)} ms, 95 % under ${worst(writes).toFixed(2)} ms`,
);
