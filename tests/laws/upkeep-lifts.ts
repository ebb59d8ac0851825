/** Whole lifts with made-up years: ten anchors, rounds, a job that the reading of a file would give. All invented. */
import type { AnchorHistory } from "@floorworthy/assess/upkeep";
import type { Generator } from "@floorworthy/engine/numerics";
import { type Job, type KnownQuantity, readJob, unknown, type Visit } from "@floorworthy/job";
import { type Disturbance, inventHistory, type Kind } from "../../bench/histories/anchors.ts";

const text = `floorworthy: 1
title: Invented yard
lift:
  name: Invented 10
  kind: two-post
  manual: in-hand
  rated: 10000 lb
  anchors:
    holes: [[-7 in, -6 in], [-7 in, 0 in], [-7 in, 6 in], [4 in, -6 in], [4 in, 6 in]]
    product: { kind: expansion, diameter: 3/4 in, effectiveEmbedment: 3 1/4 in }
    torque: 110 lb-ft
installation: { date: 2020-01-01 }
`;

export const bareJob = (): Job => {
  const read = readJob(text);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};

export const known = (value: number): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  basis: { kind: "measured" },
  written: String(value),
});

export interface Turned {
  readonly anchor: string;
  /** by round, rad; undefined: not read */
  readonly turns: readonly (number | undefined)[];
}

const DAY = 86_400_000;
export const dayAfterSetting = (days: number): string =>
  new Date(Date.parse("2020-01-01") + days * DAY).toISOString().slice(0, 10);

export const withRounds = (job: Job, days: readonly number[], anchors: readonly Turned[]): Job => ({
  ...job,
  visits: days.map(
    (day, i): Visit => ({
      date: dayAfterSetting(day),
      who: undefined,
      temperature: unknown,
      wrench: undefined,
      readings: anchors.flatMap(({ anchor, turns }) => {
        const turn = turns[i];
        return turn === undefined
          ? []
          : [{ anchor, found: unknown, turned: known(turn), projection: unknown, note: undefined }];
      }),
    }),
  ),
});

const names = ["L", "R"].flatMap((side) => [1, 2, 3, 4, 5].map((n) => `${side}${n}`));
const days = [30, 180, 365, 545, 730];

/** A lift whose first anchor is of the given kind and whose others relax. The rounds of all are on the same days. */
export const inventLift = (
  kind: Kind,
  disturbance: Disturbance,
  pitch: number,
  next: Generator,
): { readonly job: Job; readonly moved: readonly number[] } => {
  const histories = names.map((_, i) =>
    inventHistory(i === 0 ? kind : "relaxing", disturbance, days.length, pitch, next),
  );
  const turned = histories.map(
    ({ visits }, i): Turned => ({
      anchor: names[i]!,
      turns: days.map((day) => visits.find((visit) => Math.abs(visit.day - day) <= 0.11 * day)?.nutTurn),
    }),
  );
  return { job: withRounds(bareJob(), days, turned), moved: histories.map(({ moved }) => moved) };
};

export const answerOf = (histories: readonly AnchorHistory[], anchor: string): AnchorHistory =>
  histories.find((history) => history.anchor === anchor)!;
