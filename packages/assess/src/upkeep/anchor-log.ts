import type { Visit as BoltVisit } from "@floorworthy/engine/bolts";
import type { Job, Quantity, Visit } from "@floorworthy/job";
import { daysBetween } from "../facts/calendar.ts";
import { anchorNames } from "../layout.ts";

type Reading = Visit["readings"][number];

/** One anchor's readings in the order of the days, ready for the watch. */
export interface AnchorLog {
  readonly anchor: string;
  /** is it a hole of this lift; a name nobody knows is kept and said */
  readonly known: "of-this-lift" | "not-of-this-lift";
  /** day the count begins, YYYY-MM-DD: set, or the first round where nobody wrote when */
  readonly from: string | undefined;
  readonly fromWhat: "setting" | "first-round";
  readonly rounds: readonly { readonly date: string; readonly visit: Visit; readonly reading: Reading }[];
  /** the same for the mathematics; a round on the first day of the count is left out */
  readonly visits: readonly (BoltVisit & { readonly date: string })[];
  /** nut turns of rounds left out, rad: they count against the limit all the same */
  readonly turnedBefore: number;
  /** torque the nut was set to, N·mm; undefined where nobody knows */
  readonly setTo: number | undefined;
}

const plain = (name: string): string => name.trim().toUpperCase();

/** Anchors in the order of the lift's holes, left base first, then names that were read and belong to no hole. */
export const anchorLogs = (job: Job): AnchorLog[] => {
  const holes = anchorNames(job);
  const read = job.visits.flatMap(({ readings }) => readings.map(({ anchor }) => anchor.trim()));
  const strange = read.filter(
    (name, i) =>
      !holes.some((hole) => plain(hole) === plain(name)) && read.findIndex((r) => plain(r) === plain(name)) === i,
  );
  return [
    ...holes.map((name) => logOf(job, name, "of-this-lift")),
    ...strange.map((name) => logOf(job, name, holes.length > 0 ? "not-of-this-lift" : "of-this-lift")),
  ];
};

const logOf = (job: Job, anchor: string, known: AnchorLog["known"]): AnchorLog => {
  const rounds = job.visits.flatMap((visit) => {
    const reading = visit.readings.find((r) => plain(r.anchor) === plain(anchor));
    return reading ? [{ date: visit.date, visit, reading }] : [];
  });
  const record = job.installation?.holes.find((hole) => plain(hole.anchor) === plain(anchor));
  const set = job.installation?.date;
  const from = set ?? rounds[0]?.date;
  const firstStud = record?.projection.known
    ? { date: "", at: record.projection.value }
    : rounds.flatMap(({ date, reading: { projection } }) =>
        projection.known ? [{ date, at: projection.value }] : [],
      )[0];
  const all = rounds.map(({ date, reading }) => ({
    date,
    day: from === undefined ? 0 : daysBetween(from, date),
    ...given("nutTurn", reading.turned),
    ...given("torqueFound", reading.found),
    ...(reading.projection.known && firstStud && firstStud.date !== date
      ? { rise: reading.projection.value - firstStud.at }
      : {}),
  }));
  const torque = record?.torque.known ? record.torque : job.lift.anchors.torque;
  return {
    anchor,
    known,
    from,
    fromWhat: set ? "setting" : "first-round",
    rounds,
    visits: all.filter(({ day }) => day > 0),
    turnedBefore: all.filter(({ day }) => day <= 0).reduce((sum, { nutTurn = 0 }) => sum + nutTurn, 0),
    setTo: torque.known ? torque.value : undefined,
  };
};

const given = <K extends string>(key: K, fact: Quantity): Partial<Record<K, number>> =>
  fact.known ? ({ [key]: fact.value } as Record<K, number>) : {};
