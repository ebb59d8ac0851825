import { governingLoads, type KnownFact, type Referral } from "@floorworthy/assess/referral";
import { fromBase, type UnitSystem } from "@floorworthy/engine/quantities";
import { number, section, table, wrap } from "./text.ts";
import { shownTerm, unfold } from "./unfold.ts";

/** The pack in the order an engineer reads it. */
export const referralLines = (pack: Referral, units: UnitSystem, fold: "folded" | "unfolded"): string[] => [
  pack.title,
  "",
  ...wrap(pack.sentence),
  ...section("Asked", pack.question.asked),
  ...section("Not asked", pack.question.notAsked),
  ...section(
    "What led here",
    pack.stops.map(({ reason, next }) => `${reason} ${next}`),
  ),
  ...section("Lines of the maker's page not met or not shown", pack.reasons),
  ...facts("Site", pack.site),
  ...facts("Floor", pack.floor),
  ...facts("Readings", pack.readings),
  ...facts("Lift", pack.lift),
  ...facts("Anchors", pack.anchors),
  ...facts("Vehicles", pack.vehicles),
  ...loads(pack, units),
  ...section("Not verified", pack.notVerified),
  ...section("Photographs wanted", pack.photographs),
  ...section("For the record, to be dated and initialled", pack.told),
  "",
  "Parts of an engineer's package",
  ...table(pack.parts.map(({ part, filled }, i) => [`${i + 1}`, part, filled])),
  ...(fold === "unfolded" ? workings(pack) : []),
  "",
  ...pack.cautions.flatMap((caution) => wrap(caution, "! ")),
];

const facts = (title: string, known: readonly KnownFact[]): string[] =>
  known.length === 0 ? [] : ["", title, ...table(known.map(({ what, value, basis }) => [what, value, basis]))];

const loads = ({ loads: { words, assumed, cases, weights } }: Referral, units: UnitSystem): string[] => {
  const force = units === "si" ? "kN" : "lb";
  const moment = units === "si" ? "kN·m" : "kip-in";
  const f = (n: number): string => number(fromBase(n, force));
  const m = (n: number): string => number(fromBase(n, moment));
  return [
    "",
    "Loads on the floor",
    ...wrap(words),
    ...table(weights.map((w) => [w.symbol, w.words, shownTerm(w), w.basis ?? ""])),
    ...(cases.length === 0
      ? []
      : [
          ...table([
            ["case", "base", `P ${force}`, `Mx ${moment}`, `My ${moment}`, `Vx ${force}`, `Vy ${force}`, "largest"],
            ...governingLoads(cases).map(({ caseName, base, governs }) => [
              caseName,
              base.side,
              f(base.P),
              m(base.Mx),
              m(base.My),
              f(base.Vx),
              f(base.Vy),
              governs.join(", "),
            ]),
          ]),
          ...wrap(
            "x from the left wall, y from the back wall toward the door; the resultant of a base lies at x = My/P, y = Mx/P from its column. All cases: --json.",
          ),
        ]),
    ...section("Taken for the loads", assumed),
  ];
};

const workings = ({ loads: { cases } }: Referral): string[] => [
  "",
  "WORKINGS",
  ...cases.flatMap(({ name, bases }) => [
    `  ${name}`,
    ...bases.flatMap(({ side, terms }) => [`    ${side} base`, ...terms.flatMap((t) => unfold(t, 3))]),
  ]),
];
