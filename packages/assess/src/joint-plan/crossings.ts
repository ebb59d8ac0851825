/** What a saw must know of the tubes it passes over. */
import { segmentsMeet } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { PlannedLine } from "./job-joint-plan.ts";
import { tape } from "./tape.ts";

export const crossingWords = (job: Job, lines: readonly PlannedLine[], depth: number): readonly string[] =>
  job.floor.pipes.flatMap(({ name, kind, line, depth: down }) => {
    const crossed = lines.filter(({ from, to }) =>
      line.slice(1).some((b, i) => segmentsMeet({ a: from, b: to }, { a: line[i]!, b })),
    );
    if (crossed.length === 0) return [];
    const which = `${crossed.length > 1 ? "Lines" : "Line"} ${crossed.map((l) => l.name).join(", ")}`;
    const pass = `${which} ${crossed.length > 1 ? "cross" : "crosses"} ${name || kind}`;
    return down.known
      ? [
          `${pass}: its top is ${tape(down.low, job.units)} down, the cut ${tape(depth, job.units)}; set the saw's stop.`,
        ]
      : [`${pass}, and nobody has said how deep it lies: no cut there before that is known.`];
  });
