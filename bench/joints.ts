/** How long the joints of a whole job take: 40 × 60 ft, ten things in the way. Run: npx tsx bench/joints.ts */
import { assess } from "@floorworthy/assess";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";

const pad = (i: number, x: number, y: number) =>
  `    - { name: pad ${i}, kind: pad, state: proposed, outline: { width: 5 ft, depth: 5 ft, centre: [${x} ft, ${y} ft] }, thickness: 12 in, tied: cast-with }`;
const post = (i: number, x: number, y: number) =>
  `    - { name: post ${i}, outline: { width: 8 in, depth: 8 in, centre: [${x} ft, ${y} ft] } }`;
const pipe = (i: number, x: number) =>
  `    - { name: conduit ${i}, kind: conduit, line: [[${x} ft, 50 ft], [${x} ft, 54 ft]], depth: 1 in, clear: 6 in }`;

const job = `
floorworthy: 1
title: Bench
lift: { name: Bench lift, kind: two-post, spacing: 126 in, asks: { thickness: 5 in, edge: 8 in } }
bay:
  outline: { width: 40 ft, depth: 60 ft }
  posts:
${[post(1, 20, 20), post(2, 20, 40), post(3, 30, 30)].join("\n")}
floor:
  state: to-be-poured
  kind: slab-on-ground
  below: ground
  postTension: none-shown
  heat: none
  thickness: 6 in
  zones:
${[pad(1, 8, 12), pad(2, 18.5, 12), pad(3, 8, 45), pad(4, 28, 45), pad(5, 33, 12)].join("\n")}
  pipes:
${[pipe(1, 12), pipe(2, 36)].join("\n")}
columns: { left: [8 ft, 12 ft], right: [18.5 ft, 12 ft] }
`;

const strip = job
  .replace(
    / {2}zones:\n(?: {4}- .*\n)+/,
    `  zones:\n    - { name: strip, kind: strip, state: proposed, outline: { width: 186 in, depth: 5 ft, centre: [20 ft, 30 ft] }, thickness: 12 in, tied: cast-with }\n`,
  )
  .replace("left: [8 ft, 12 ft], right: [18.5 ft, 12 ft]", "left: [177 in, 30 ft], right: [303 in, 30 ft]");

for (const [name, text] of [
  ["pads", job],
  ["a strip that breaks a rule", strip],
] as const) {
  const read = readJob(text);
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.line}: ${issue.message}`).join("\n"));
  const assessment = assess(read.job);
  for (let i = 0; i < 2; i++) {
    const start = process.cpuUsage();
    const plan = planJobJoints(read.job, assessment);
    const { user, system } = process.cpuUsage(start);
    if (isUnable(plan)) throw new Error(plan.reason);
    console.log(
      `${name}: ${((user + system) / 1000).toFixed(0)} ms of processor; ${plan.lines.length} lines, ${plan.sawLength.value.toFixed(0)} ft of cut, ${plan.unmet.length} rules unmet, ${plan.stops.length} stops`,
    );
  }
}
