import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { stopsOf } from "../stops/stops.ts";

/** Why no pad is designed for this job; nothing where one may be. */
export const padRefused = (job: Job): Unable | undefined => {
  const [stop] = stopsOf(job);
  if (stop) return unable("pad", `${stop.reason} ${stop.next}`);
  if (job.lift.kind !== "two-post")
    return unable(
      "pad",
      `Pads are designed for two-post lifts; a ${job.lift.kind} lift is judged by its maker's page only.`,
    );
  if (!job.position)
    return unable("pad", "Where the columns will stand is not known. Write columns: with left and right.");
  if (!job.lift.asks.thickness.known)
    return unable(
      "pad",
      "The thickness the maker asks is not known. No pad is designed without the maker's floor page.",
    );
  return undefined;
};

/** Pipes and tubes a cut-out would meet: that place is not cut. */
export const pipesMet = (
  job: Job,
  outlines: readonly (readonly { readonly x: number; readonly y: number }[])[],
  depth: number,
): string[] =>
  job.floor.pipes
    .filter((pipe) => !(pipe.depth.known && pipe.depth.low > depth))
    .filter((pipe) => pipe.line.slice(1).some((b, i) => outlines.some((ring) => meets(pipe.line[i]!, b, ring))))
    .map(({ name }) => name);

type P = { readonly x: number; readonly y: number };

/** Whether a line passes through an outline without notches. */
const meets = (a: P, b: P, ring: readonly P[]): boolean => {
  let [t0, t1] = [0, 1];
  const turn = Math.sign(
    ring.reduce((s, p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      return s + p.x * q.y - q.x * p.y;
    }, 0),
  );
  for (const [i, p] of ring.entries()) {
    const q = ring[(i + 1) % ring.length]!;
    const at = (r: P): number => turn * ((q.y - p.y) * (r.x - p.x) - (q.x - p.x) * (r.y - p.y));
    const [da, db] = [at(a), at(b)];
    if (da > 0 && db > 0) return false;
    if (da > 0) t0 = Math.max(t0, da / (da - db));
    else if (db > 0) t1 = Math.min(t1, da / (da - db));
  }
  return t1 > t0;
};
