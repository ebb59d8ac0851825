import { degrees, torqueUnit, type Upkeep } from "@floorworthy/assess/upkeep";
import { fromBase, preferredUnit } from "@floorworthy/engine/quantities";
import type { Job, Visit } from "@floorworthy/job";
import { type CsvCell, csv } from "./csv.ts";

/** Every reading of every round, oldest first: one line per anchor and round, in the job's units. */
export const historyCsv = (job: Job, { anchors }: Upkeep): string => {
  const [torque, length, warmth] = [
    torqueUnit(job.units),
    preferredUnit("length", job.units),
    preferredUnit("temperature", job.units),
  ];
  const rounded = (value: number | undefined, decimals: number): CsvCell =>
    value === undefined ? undefined : Number(value.toFixed(decimals));
  const mm = (value: number | undefined): CsvCell =>
    rounded(value === undefined ? undefined : fromBase(value, length), job.units === "si" ? 2 : 4);
  const visit = (date: string): Visit | undefined => job.visits.find((v) => v.date === date);
  const rows = anchors
    .flatMap(({ anchor, setTo, limit, rounds }) => rounds.map((round) => ({ anchor, setTo, limit, round })))
    .toSorted((a, b) => a.round.date.localeCompare(b.round.date))
    .map(({ anchor, setTo, limit, round }): CsvCell[] => {
      const { who, wrench, temperature } = visit(round.date) ?? {};
      return [
        round.date,
        anchor,
        rounded(setTo === undefined ? undefined : fromBase(setTo, torque), 1),
        rounded(round.found === undefined ? undefined : fromBase(round.found, torque), 1),
        round.turned === undefined ? undefined : degrees(round.turned),
        round.controlLimit === undefined ? undefined : degrees(round.controlLimit),
        mm(round.takeUp),
        mm(round.rise),
        mm(limit),
        round.verdict,
        round.state,
        round.sound,
        rounded(temperature?.known ? fromBase(temperature.value, warmth) : undefined, 0),
        who,
        wrench,
        round.note,
      ];
    });
  return csv(
    [
      "date",
      "anchor",
      `set to, ${torque}`,
      `found, ${torque}`,
      "turned, deg",
      "rings above, deg",
      `take-up in all, ${length}`,
      `rise of the stud, ${length}`,
      `limit, ${length}`,
      "pattern so far",
      "state",
      "sound",
      `temperature, ${warmth}`,
      "who",
      "wrench",
      "note",
    ],
    rows,
  );
};
