import { nutTravel } from "./threads.ts";
import type { Visit } from "./visit.ts";

/** How well a visit is read (one standard deviation). Defaults: common practice, no source. */
export interface ReadingError {
  /** rad */
  readonly nutTurn: number;
  /** of the turn read: wrench and friction differ from visit to visit */
  readonly turnFraction: number;
  /** mm */
  readonly rise: number;
}

export const usualReadingError: ReadingError = { nutTurn: (5 * Math.PI) / 180, turnFraction: 0.15, rise: 0.5 };

/** One reading as a row: what a unit of settling and of slip would show there, what was read, all over its error. */
interface Row {
  readonly settling: number;
  readonly slip: number;
  readonly read: number;
}

/** A shape of the two movements in time: ln(1 + t/τ), and (t - onset)^power scaled to 1 at the last visit. */
interface Shape {
  readonly tau: number;
  readonly onset: number;
  readonly power: 1 | 2;
}

/** The best fit of movement = settling·ln(1 + t/τ) + slip·shape(t), both at least 0. */
export interface MovementFit {
  /** sum of squared, error-scaled misfits */
  readonly misfit: number;
  /** movement by settling and by slip up to the last visit, mm */
  readonly settled: number;
  readonly slipped: number;
  /** speed of slip at the last visit, mm per day */
  readonly rate: number;
  readonly shape: Shape;
}

/** What may take part in the fit. */
export type Parts = "settling" | "slip" | "both";

/**
 * Least squares over a small set of shapes: τ of 1 h, 1, 7 and 30 days; slip beginning at the setting or at any visit but
 * the last, steady or growing with the square of time. Both amounts are kept from below 0, so that a settling anchor is not
 * explained by rising and sinking at once.
 */
export const fitMovement = (
  visits: readonly Visit[],
  pitch: number,
  error: ReadingError,
  parts: Parts,
): MovementFit | undefined => {
  let best: MovementFit | undefined;
  for (const shape of shapesOf(visits)) {
    const fit = solve(rowsOf(visits, pitch, error, shape), parts);
    const last = visits[visits.length - 1]!.day;
    if (best === undefined || fit.misfit < best.misfit - 1e-9)
      best = {
        misfit: fit.misfit,
        settled: fit.settling * Math.log(1 + last / shape.tau),
        slipped: fit.slip,
        rate: (fit.slip * shape.power) / (last - shape.onset),
        shape,
      };
  }
  return best;
};

/**
 * The fastest speed of slip at the last visit that the readings allow: misfit no more than `allowed`. mm per day
 *
 * Method: for a given slip the best settling is a = max(0, (ay - s ab)/aa), so the misfit is convex in s and made of two
 * parabolas that meet where a becomes 0; the larger root against `allowed` is in closed form.
 */
export const fastestSlip = (visits: readonly Visit[], pitch: number, error: ReadingError, allowed: number): number => {
  const last = visits[visits.length - 1]!.day;
  let fastest = 0;
  for (const shape of shapesOf(visits)) {
    const slip = largestSlip(momentsOf(rowsOf(visits, pitch, error, shape)), allowed);
    fastest = Math.max(fastest, (slip * shape.power) / (last - shape.onset));
  }
  return fastest;
};

/** Sums of products over the rows: a settling, b slip, y read. */
interface Moments {
  readonly aa: number;
  readonly ab: number;
  readonly bb: number;
  readonly ay: number;
  readonly by: number;
  readonly yy: number;
}

const momentsOf = (rows: readonly Row[]): Moments => {
  let [aa, ab, bb, ay, by, yy] = [0, 0, 0, 0, 0, 0];
  for (const { settling: a, slip: b, read: y } of rows) {
    aa += a * a;
    ab += a * b;
    bb += b * b;
    ay += a * y;
    by += b * y;
    yy += y * y;
  }
  return { aa, ab, bb, ay, by, yy };
};

/** 0 where no slip of this shape stays within `allowed`. */
const largestSlip = ({ aa, ab, bb, ay, by, yy }: Moments, allowed: number): number => {
  const root = (square: number, half: number, rest: number): number => {
    const inside = half * half - square * (rest - allowed);
    return square > 0 && inside >= 0 ? Math.max(0, (half + Math.sqrt(inside)) / square) : 0;
  };
  const meet = aa > 0 && ab > 0 ? ay / ab : aa > 0 ? Number.POSITIVE_INFINITY : 0;
  const atMeet = yy - 2 * meet * by + meet * meet * bb;
  const alone = meet <= 0 || (Number.isFinite(meet) && (atMeet <= allowed || by > meet * bb));
  if (alone) return root(bb, by, yy);
  return root(bb - (ab * ab) / aa, by - (ay * ab) / aa, yy - (ay * ay) / aa);
};

/** Slip may begin at the setting or at any visit but the last; of a long history at every few visits, so that time stays short. */
const MOST_ONSETS = 12;

const shapesOf = (visits: readonly Visit[]): Shape[] => {
  const days = [0, ...visits.slice(0, -1).map((visit) => visit.day)].filter(
    (day, i, all) => i === 0 || day > all[i - 1]!,
  );
  const every = Math.ceil(days.length / MOST_ONSETS);
  const onsets = days.filter((_, i) => i % every === 0 || i === days.length - 1);
  return [1 / 24, 1, 7, 30].flatMap((tau) =>
    onsets.flatMap((onset) => [1, 2].map((power) => ({ tau, onset, power: power as 1 | 2 }))),
  );
};

const rowsOf = (visits: readonly Visit[], pitch: number, error: ReadingError, shape: Shape): Row[] => {
  const last = visits[visits.length - 1]!.day;
  const settling = (day: number): number => Math.log(1 + day / shape.tau);
  const slip = (day: number): number => (Math.max(0, day - shape.onset) / (last - shape.onset)) ** shape.power;
  const rows: Row[] = [];
  let before = 0;
  for (const { day, nutTurn, rise } of visits) {
    if (nutTurn !== undefined) {
      const sd = nutTravel(Math.hypot(error.nutTurn, error.turnFraction * nutTurn), pitch);
      rows.push({
        settling: (settling(day) - settling(before)) / sd,
        slip: (slip(day) - slip(before)) / sd,
        read: nutTravel(nutTurn, pitch) / sd,
      });
      before = day;
    }
    if (rise !== undefined)
      rows.push({ settling: settling(day) / error.rise, slip: slip(day) / error.rise, read: rise / error.rise });
  }
  return rows;
};

/** Two amounts, neither below 0, by least squares. */
const solve = (rows: readonly Row[], parts: Parts): { settling: number; slip: number; misfit: number } => {
  const { aa, ab, bb, ay, by, yy } = momentsOf(rows);
  const misfit = (a: number, s: number): number =>
    Math.max(0, yy - 2 * a * ay - 2 * s * by + a * a * aa + 2 * a * s * ab + s * s * bb);
  const settling = { settling: aa > 0 ? Math.max(0, ay / aa) : 0, slip: 0 };
  const slip = { settling: 0, slip: bb > 0 ? Math.max(0, by / bb) : 0 };
  const det = aa * bb - ab * ab;
  const together = { settling: (ay * bb - by * ab) / det, slip: (by * aa - ay * ab) / det };
  const candidates = parts === "settling" ? [settling] : parts === "slip" ? [slip] : [settling, slip];
  if (parts === "both" && det > 1e-12 * aa * bb && together.settling >= 0 && together.slip >= 0)
    candidates.push(together);
  return candidates
    .map((c) => ({ ...c, misfit: misfit(c.settling, c.slip) }))
    .reduce((best, c) => (c.misfit < best.misfit ? c : best));
};
