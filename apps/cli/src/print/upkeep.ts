import {
  type AnchorHistory,
  degrees,
  noRoundWords,
  printMovement,
  printTorque,
  type Upkeep,
} from "@floorworthy/assess/upkeep";
import { printNumber, type Term, type UnitSystem } from "@floorworthy/engine/quantities";
import { table, wrap } from "./text.ts";

type Fold = "folded" | "unfolded";

const answers = {
  sound: "SOUND",
  "retorque-and-look": "RE-TORQUE AND LOOK",
  "out-of-service": "OUT OF SERVICE",
  "no-readings": "NOT READ YET",
  "not-read": "NOT READ",
  stopped: "NOT JUDGED: STOP",
  "not-judged": "NOT JUDGED",
} as const;

/** The answer first, then why, what to do, the trend of every anchor, cracks, the next round. */
export const upkeepLines = (u: Upkeep, units: UnitSystem, fold: Fold): string[] => [
  u.title,
  "",
  answers[u.answer],
  ...wrap(u.sentence),
  ...section("Why", u.reasons),
  ...section("What to do", u.steps),
  ...trend(u.anchors, units),
  ...section(
    "Cracks",
    u.cracks.map(({ sentence, alarms }) => [sentence, ...alarms.slice(1)].join(" ")),
  ),
  ...nextRound(u),
  ...section(
    "Ways back into service",
    u.remedies.map(({ title, detail, volume }) => `${title}${volume ? `, ${shown(volume)} to order` : ""}. ${detail}`),
  ),
  ...section("Not judged", u.notJudged),
  ...section("What torque says", u.torqueSays),
  ...(fold === "unfolded" ? workings(u) : []),
  "",
  ...wrap(
    "This reads a log and gives advice. It is not an inspection by a qualified inspector and approves nothing. The maker's manual comes first.",
    "! ",
  ),
];

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];

const MOST_ROUNDS = 6;

/** One row per anchor: the turn of the nut at each of the last rounds (an exclamation mark where it rings), then the sum. */
const trend = (anchors: readonly AnchorHistory[], units: UnitSystem): string[] => {
  const dates = [...new Set(anchors.flatMap(({ rounds }) => rounds.map(({ date }) => date)))].toSorted();
  if (dates.length === 0) return [];
  const shownDates = dates.slice(-MOST_ROUNDS);
  return [
    "",
    `Turn of each nut, degrees (! rings: more than a settling anchor would need)${dates.length > MOST_ROUNDS ? `, last ${MOST_ROUNDS} rounds` : ""}`,
    ...table([
      ["", ...shownDates, "take-up", "limit", "rise", "found last", ""],
      ...anchors.map((anchor) => trendRow(anchor, shownDates, units)),
    ]),
  ];
};

const trendRow = (history: AnchorHistory, dates: readonly string[], units: UnitSystem): string[] => {
  const { anchor, rounds, takeUp, limit, answer, setTo } = history;
  const at = (date: string) => rounds.find((round) => round.date === date);
  const rise = rounds.findLast((round) => round.rise !== undefined)?.rise;
  const found = rounds.findLast((round) => round.found !== undefined)?.found;
  return [
    anchor,
    ...dates.map((date) => {
      const { turned, control } = at(date) ?? {};
      return turned === undefined ? "-" : `${degrees(turned)}${control === "over" ? " !" : ""}`;
    }),
    takeUp === undefined ? "-" : printMovement(takeUp, units),
    printMovement(limit, units),
    rise === undefined ? "-" : printMovement(rise, units),
    found === undefined
      ? "-"
      : `${printTorque(found, units)}${setTo === undefined ? "" : ` of ${printTorque(setTo, units)}`}`,
    answers[answer],
  ];
};

const nextRound = ({ next, answer }: Upkeep): string[] => {
  if (!next) return section("Next round", [noRoundWords(answer)]);
  return [
    "",
    `Next round: ${next.when}`,
    ...next.reasons.flatMap(({ date, words, basis }) => wrap(`${date}  ${words} (${basis})`, "- ")),
  ];
};

const shown = ({ value, unit }: Term): string => {
  const decimals = unit === "in" || unit === "mm" ? 4 : Math.abs(value) >= 100 ? 0 : 2;
  return `${printNumber(value, decimals)}${unit ? ` ${unit}` : ""}`;
};

const workings = ({ preload, anchors, cracks }: Upkeep): string[] => [
  "",
  "WORKINGS",
  "",
  "Torque and pull",
  ...preload.flatMap((term) => unfolded(term, 1)),
  ...anchors.flatMap(({ anchor, terms }) =>
    terms.length === 0 ? [] : ["", anchor, ...terms.flatMap((term) => unfolded(term, 1))],
  ),
  ...cracks.flatMap(({ crack, terms }) =>
    terms.length === 0 ? [] : ["", crack, ...terms.flatMap((term) => unfolded(term, 1))],
  ),
];

/** Movements are small, so that four decimals are kept where other numbers need two. */
const unfolded = (term: Term, depth: number): string[] => {
  const pad = "  ".repeat(depth);
  const formula = [term.formula && `= ${term.formula}`, term.worked && `= ${term.worked}`].filter(Boolean).join(" ");
  const born = [term.clause, term.basis].filter(Boolean).join("; ");
  return [
    `${pad}${term.symbol}  ${term.words}: ${shown(term)}`,
    ...(formula ? [`${pad}    ${formula}`] : []),
    ...(born ? [`${pad}    [${born}]`] : []),
    ...(term.from ?? []).flatMap((t) => unfolded(t, depth + 1)),
  ];
};
