import { constantTemperature, heated } from "@floorworthy/engine/concrete";
import { type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { term } from "../facts/print.ts";
import { type Question, strengthSpan } from "./counts.ts";
import type { Told } from "./told.ts";
import { type CureDate, constantTemperatures, cureDate, printTemperature } from "./words.ts";

/** What the strength does under one way of keeping the concrete warm. */
export interface HeatRow {
  readonly id: string;
  readonly words: string;
  /** day until which it is kept warm; undefined as it is */
  readonly until: number | undefined;
  readonly from: CureDate;
  readonly cautious: CureDate;
  /** the later of the maker's day and the cautious one */
  readonly drilling: CureDate;
}

/** How long warmth is needed for the strength never to govern. */
export interface HeatEnough {
  /** °C */
  readonly holds: number;
  readonly words: string;
  readonly until: CureDate;
  readonly term: Term;
}

interface Setting {
  readonly job: Job;
  readonly told: Told;
  readonly question: Question;
  readonly poured: string | undefined;
  /** day from which something can still be done */
  readonly now: number;
  /** the maker's day, 0 where the page has none */
  readonly maker: number;
}

const warmed = ({ low, value, high }: Told, from: number, to: number, holds: number) => ({
  low: heated(low, from, to, holds),
  value: heated(value, from, to, holds),
  high: heated(high, from, to, holds),
});

const row = (
  { told, question, poured, maker }: Setting,
  id: string,
  words: string,
  stories: Pick<Told, "low" | "value" | "high"> = told,
  until?: number,
): HeatRow => {
  const { from, cautious } = strengthSpan(stories, question);
  return {
    id,
    words,
    until,
    from: cureDate(from, poured),
    cautious: cureDate(cautious, poured),
    drilling: cureDate(Math.max(maker, cautious), poured),
  };
};

/** Warmth in round figures of the trade. */
const warmths = ({
  units,
}: Job): { readonly blanket: number; readonly heater: number; readonly others: readonly number[] } =>
  units === "si"
    ? { blanket: 10, heater: 15, others: [13, 20] }
    : { blanket: toBase(50, "°F"), heater: toBase(60, "°F"), others: [toBase(55, "°F"), toBase(70, "°F")] };

/** As it is, under a blanket and with a heater from now until several days. */
export const heatRows = (setting: Setting): readonly HeatRow[] => {
  const { job, told, now } = setting;
  const { blanket, heater } = warmths(job);
  const asItIs = row(setting, "as-it-is", "As it is");
  const untils = [3, 7, 14, 21, 28].map((days) => Math.max(now, 0) + days).filter((n) => n - 7 < asItIs.cautious.day);
  const of = (what: string, holds: number): readonly HeatRow[] =>
    untilItIsThere(
      untils.map((until) =>
        row(
          setting,
          `${what}-${until}`,
          `${what === "blanket" ? "Blanket that holds" : "Heater to"} ${printTemperature(holds, job.units)} until day ${until}`,
          warmed(told, now, until, holds),
          until,
        ),
      ),
    );
  const helps = (r: HeatRow): boolean => r.from.day < asItIs.from.day || r.cautious.day < asItIs.cautious.day;
  return [asItIs, ...[...of("blanket", blanket), ...of("heater", heater)].filter(helps)];
};

/** Days at temperatures that never change, for a pour of which nobody has told any. */
export const constantRows = (setting: Setting): readonly HeatRow[] => {
  const { units } = setting.job;
  return constantTemperatures(units).map((temperature) => {
    const same = constantTemperature(temperature);
    const words = `Always ${printTemperature(temperature, units)}`;
    return row(setting, `constant-${Math.round(temperature)}`, words, { low: same, value: same, high: same });
  });
};

/** Warmth held on after the strength is there changes nothing: the first such row ends the list. */
const untilItIsThere = (rows: readonly HeatRow[]): readonly HeatRow[] => {
  const enough = rows.findIndex(({ cautious, until = 0 }) => cautious.day <= until);
  return rows.slice(0, enough < 0 ? rows.length : enough + 1);
};

const MOST = 120;

/** The first day after `from` and up to `to` from which a condition holds that, once it holds, goes on holding. */
const firstDay = (from: number, to: number, holds: (day: number) => boolean): number | undefined => {
  if (to <= from || !holds(to)) return undefined;
  let [no, yes] = [from, to];
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
};

/** The first whole day until which a warmth must be held for the strength to be there by the maker's day; none where it is anyway or never. */
export const heatEnough = (setting: Setting): readonly HeatEnough[] => {
  const { job, told, question, poured, now, maker } = setting;
  if (maker <= 0 || strengthSpan(told, question).cautious <= maker) return [];
  const { blanket, heater, others } = warmths(job);
  return [blanket, heater, ...others]
    .toSorted((a, b) => a - b)
    .flatMap((holds) => {
      const reached = (until: number): boolean =>
        strengthSpan(warmed(told, now, until, holds), question).cautious <= maker;
      const first = firstDay(Math.floor(now), Math.min(MOST, Math.ceil(maker)), reached);
      if (first === undefined) return [];
      const words = `${printTemperature(holds, job.units)} held until day ${first}`;
      return [
        {
          holds,
          words,
          until: cureDate(first, poured),
          term: term("n", `day until which ${printTemperature(holds, job.units)} is held`, first, "days", job.units, {
            formula: "least whole day for which the cautious strength day ≤ the maker's day",
          }),
        },
      ];
    });
};
