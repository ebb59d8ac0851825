/** Wished lines that could be cut only in part. */
import { type JointLine, type JointTask, lineBlocks } from "@floorworthy/engine/joints";
import type { Job } from "@floorworthy/job";
import type { NotMade } from "./job-joint-plan.ts";
import { whereWords } from "./line-words.ts";
import type { AskedLine } from "./wanted-lines.ts";

type Stretch = readonly [number, number];

/** What is left of a stretch when others are taken away. */
const without = (whole: Stretch, taken: readonly Stretch[]): readonly Stretch[] =>
  taken
    .toSorted((a, b) => a[0] - b[0])
    .reduce<readonly Stretch[]>(
      (left, [from, to]) =>
        left.flatMap(([a, b]) => {
          if (to <= a || from >= b) return [[a, b] as const];
          return [...(from > a ? [[a, from] as const] : []), ...(to < b ? [[to, b] as const] : [])];
        }),
      [whole],
    );

/** Shorter pieces are not worth a word, mm. */
const WORTH_A_WORD = 300;

export const partlyMade = (
  asked: readonly AskedLine[],
  lines: readonly JointLine[],
  task: JointTask,
  job: Job,
): readonly NotMade[] =>
  asked.flatMap((wish): readonly NotMade[] => {
    const { axis, at, from, to, what } = wish;
    const along = axis === "x" ? "y" : "x";
    const made = lines
      .filter((line) => line.axis === axis && Math.abs(line.a[axis] - at) < 1)
      .map((line): Stretch => [line.a[along], line.b[along]]);
    const left = without([from, to], made);
    if (left.length === 1 && left[0]![0] === from && left[0]![1] === to) return [];
    return left
      .filter(([a, b]) => b - a > WORTH_A_WORD)
      .map(([a, b]) => {
        const block = lineBlocks(task, axis, at).find((x) => x.from < b - 1 && x.to > a + 1);
        const ends =
          axis === "x"
            ? { from: { x: at, y: a }, to: { x: at, y: b } }
            : { from: { x: a, y: at }, to: { x: b, y: at } };
        return {
          what: `${what}, this part of it`,
          where: whereWords(ends, job.units),
          reason: block ? `Not cut: ${block.what}.` : "Not cut: the panels here keep every rule without it.",
        };
      });
  });
