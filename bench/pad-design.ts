/** How long the cheapest pad takes, and how many designs are judged. Run: npx tsx bench/pad-design.ts [job files] */
import { readFileSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import { cheapestPad, checkHabit, depthRows, habitDesign } from "@floorworthy/assess/pad";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";

const given = process.argv.slice(2);
const files =
  given.length > 0 ? given : ["four-inches-that-are-not", "new-heated-shop"].map((name) => `examples/${name}.yaml`);

for (const file of files) {
  const load = (name: string): string => readFileSync(resolve(dirname(file), basename(name)), "utf8");
  const read = readJob(readFileSync(file, "utf8"), { load });
  if (!read.ok) throw new Error(`${file} is not read`);
  for (let round = 0; round < 2; round++) {
    const [start, before] = [performance.now(), process.cpuUsage()];
    const found = cheapestPad(read.job);
    const seconds = (performance.now() - start) / 1000;
    const { user } = process.cpuUsage(before);
    console.log(`${file}: ${seconds.toFixed(1)} s, of which ${(user / 1e6).toFixed(1)} s on the processor`);
    if (isUnable(found)) console.log(`  ${found.reason}`);
    else {
      const { proof } = found;
      console.log(
        `  ${proof.designs} designs, ${proof.judged} judged, ${proof.solved} plates, ${proof.cheaperAndClosed} cheaper and closed, unproved: ${proof.unproved}`,
      );
      for (const { words, bill, figures: f } of [found.best, ...found.others])
        console.log(
          `  ${bill.total.toFixed(0)}  ${words}  crack ${f.crack.toFixed(2)} (${f.crackIn}) collapse ${f.collapse.toFixed(2)} anchors ${f.anchors.toFixed(2)} ground ${f.ground.toFixed(2)} others ${f.others.toFixed(2)} ${f.othersGovern}`,
        );
      for (const note of found.leftOut) console.log(`  - ${note}`);
    }
  }
  const start = performance.now();
  const habit = checkHabit(read.job);
  console.log(isUnable(habit) ? habit.reason : `  habit: ${habit.words} ${habit.verdict} ${habit.short.join("; ")}`);
  const rows = depthRows(read.job, habitDesign(read.job));
  if (!isUnable(rows))
    for (const { depth, concreteRatio, figures: f } of rows)
      console.log(
        `  ${depth.value.toFixed(2)} ${concreteRatio.toFixed(2)} ${isUnable(f) ? f.reason : `crack ${f.crack.toFixed(2)} ${f.crackIn} collapse ${f.collapse.toFixed(2)} anchors ${f.anchors.toFixed(2)} ground ${f.ground.toFixed(2)}`}`,
      );
  console.log(`  habit and depths: ${((performance.now() - start) / 1000).toFixed(1)} s`);
}
