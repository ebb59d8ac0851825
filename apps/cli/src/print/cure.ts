import { type CureClock, type CureDate, coversOffWords, dateWords, meanwhile } from "@floorworthy/assess/cure";
import type { PourDay } from "@floorworthy/assess/pour-day";
import { capital, type Term } from "@floorworthy/engine/quantities";
import { number, section, table, wrap } from "./text.ts";
import { shownTerm, unfold } from "./unfold.ts";

const days = (term: Term | undefined): string =>
  term === undefined ? "-" : Number.isFinite(term.value) ? `${number(Math.round(term.value * 10) / 10)} d` : "never";

const psi = (term: Term | undefined): string => (term ? shownTerm({ ...term, value: rounded(term) }) : "-");

const rounded = ({ value, unit }: Term): number =>
  unit === "psi" ? Math.round(value / 10) * 10 : Math.round(value * 10) / 10;

const when = (date: CureDate | undefined): string => (date ? dateWords(date) : "-");

const countTable = ({ counts, age }: CureClock): string[] =>
  counts.length === 0
    ? []
    : [
        "",
        ...table([
          ["Counted by", ...(age === undefined ? [] : ["worth today", "strength today"]), "strength is there"],
          ...counts.map(({ words, equivalentAge, strengthToday, date }) => [
            words,
            ...(age === undefined ? [] : [days(equivalentAge), psi(strengthToday)]),
            when(date),
          ]),
        ]),
      ];

const heatTable = ({ heat, heatEnough, maker, told }: CureClock): string[] =>
  heat.length === 0
    ? []
    : [
        "",
        told === "told" ? "What warmth buys" : "Were it always as warm as this",
        ...table([
          ["Kept", "expected from", "cautious", "drill not before"],
          ...heat.map(({ words, from, cautious, drilling }) => [words, when(from), when(cautious), when(drilling)]),
        ]),
        ...(heatEnough.length > 0
          ? wrap(
              `The strength never holds up the work${maker ? ` (it is there by ${dateWords(maker)})` : ""} with any of: ${heatEnough.map(({ words }) => words).join("; ")}.`,
              "  ",
            )
          : []),
      ];

const limitName = {
  hottest: "concrete, hottest",
  "hot-care": "concrete, hot: take care",
  coolest: "concrete, coolest",
  "cold-weather": "air, cold weather begins",
} as const;

const limitWord = { kept: "kept", broken: "BROKEN", "not-known": "not known" } as const;

const pourLines = (day: PourDay): string[] => {
  const { evaporation, missing, limits, windows, curing } = day;
  const rate = (term: Term): string => `${term.value.toFixed(term.unit === "lb/ft²/h" ? 3 : 2)} ${term.unit}`;
  return [
    "",
    "Pour day",
    ...(evaporation
      ? [
          ...wrap(
            `Water leaves the surface at ${rate(evaporation.rate)} (${rate(evaporation.low)} to ${rate(evaporation.high)}); care from ${rate(evaporation.care)}, act from ${rate(evaporation.act)}. ${evaporation.sentence}`,
            "  ",
          ),
        ]
      : wrap(
          `Evaporation is not judged: not known is ${missing.join(", ")} (--concrete, --air, --humidity, --wind).`,
          "  ",
        )),
    ...table([
      ["Limit", "at", "found", ""],
      ...limits.map(({ id, limit, found, state }) => [
        limitName[id],
        shownTerm({ ...limit, value: Math.round(limit.value) }),
        found ? shownTerm(found) : "-",
        limitWord[state],
      ]),
    ]),
    "",
    ...table([
      ["First set", windows.set.words],
      ["Wet saw", `${windows.sawWet.words} after placing`],
      ["Early-entry saw", `${windows.sawEarlyEntry.words} after placing`],
      ["Covers off", coversOffWords(curing.coversOff)],
    ]),
    ...wrap(
      `Hours at ${windows.basis}; later when it is colder. Begin when the edge of a trial cut does not ravel.`,
      "  ",
    ),
    ...wrap(`${curing.sentence} ${capital(curing.why)}. Cool slowly: ${curing.cooling}.`, "  "),
  ];
};

const terms = (clock: CureClock, { evaporation, windows, curing, limits }: PourDay): Term[] => [
  ...[clock.gain.needed, clock.gain.beside].filter((term) => term !== undefined),
  ...clock.counts.flatMap(({ equivalentAge, strengthToday, day }) =>
    [equivalentAge, strengthToday, day].filter((term) => term !== undefined),
  ),
  ...clock.heatEnough.map(({ term }) => term),
  ...(evaporation ? [evaporation.rate, evaporation.low, evaporation.high] : []),
  ...[windows.set, windows.sawWet, windows.sawEarlyEntry].flatMap(({ from, to }) => [from, to]),
  ...limits.map(({ limit }) => limit),
  curing.days,
  curing.keepAbove,
];

const poured = ({ pour, poured }: CureClock): string =>
  ({
    unknown: "day of the pour not set",
    planned: `to be poured ${poured}`,
    "gone-by": `was to be poured ${poured}`,
    poured: `poured ${poured}`,
  })[pour];

/** The day for drilling first, then how it is counted, what warmth buys, and pour day. */
export const cureLines = (clock: CureClock, day: PourDay, fold: "folded" | "unfolded"): string[] => [
  clock.title,
  "",
  ...wrap(clock.sentence),
  "",
  ...table([
    ["Concrete", `${clock.concrete}, ${poured(clock)}`],
    ...(clock.age === undefined ? [] : [["Age", `${Math.floor(clock.age)} days on ${clock.today}`]]),
    [capital(clock.strength28.words), psi(clock.strength28)],
    ["Asked before drilling", clock.ask ? psi(clock.ask) : "the page does not say"],
    ["The maker's days end", clock.maker ? when(clock.maker) : "the page does not say"],
    ["Hardens as", clock.gain.words],
    ...(clock.gain.needed ? [["Needs", `${days(clock.gain.needed)} at 73 °F (23 °C)`]] : []),
  ]),
  ...countTable(clock),
  ...section(
    "Cylinders",
    clock.cylinders.map(({ words }) => words),
  ),
  ...section("The story of the temperatures", clock.notes),
  ...heatTable(clock),
  ...section("Until then", [`May: ${meanwhile.may.join("; ")}.`, `Not: ${meanwhile.mayNot.join("; ")}.`]),
  ...pourLines(day),
  ...section("When it rains", day.rain),
  ...section("When frost comes", day.frost),
  ...(fold === "unfolded" ? ["", "Workings", ...terms(clock, day).flatMap((term) => unfold(term, 1))] : []),
  ...[...clock.warnings, ...day.warnings].flatMap((words, i) => [...(i === 0 ? [""] : []), ...wrap(words, "! ")]),
  "",
  ...wrap(
    "Advice from temperatures and published curves, no test of this concrete. Local codes and licensed practice come first.",
  ),
];
