import type { CheapestPad, DepthRow, PadAnswer } from "@floorworthy/assess/pad";
import { capital, isUnable, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { number, table, wrap } from "./text.ts";

/** What the command prints and gives as JSON. */
export interface PadReport {
  readonly title: string;
  readonly units: Job["units"];
  readonly cheapest: CheapestPad;
  /** the trade's habit for this lift, or why it cannot be computed */
  readonly habit: PadAnswer | Unable;
  readonly depths: readonly DepthRow[] | Unable;
}

/** The chosen design first; then what the habit gives, what the others cost and win, what an inch buys. */
export const padLines = (report: PadReport, fold: "folded" | "unfolded"): string[] => {
  const { best, others, leftOut, proof } = report.cheapest;
  const all = [best, ...others];
  return [
    report.title,
    "",
    "POUR",
    ...wrap(
      `${capital(best.words)}: ${concreteWords(best)}, ${amount(best.volumes.order)} to order, about ${money(best)}.`,
    ),
    ...wrap(marginWords(best)),
    ...best.notes.flatMap((note) => wrap(note, "- ")),
    "",
    "THE RULE OF THUMB BESIDE IT (3 ft round each column, 2 in deeper than the maker asks; common practice, no source)",
    ...habitLines(report.habit, best),
    "",
    "THE CHEAPEST OF EVERY SHAPE",
    ...table([["", "concrete", "cost", "first crack", "collapse", "anchors", "ground"], ...all.map(row)]),
    ...wrap(best.bill.note),
    ...wrap(
      `Of ${proof.designs.toLocaleString("en-US")} designs on the grid ${proof.judged} were judged; ${proof.unproved === 0 ? "every cheaper one falls short" : "for some shapes a cheaper one cannot be ruled out"}.`,
    ),
    ...leftOut.flatMap((note) => wrap(note, "- ")),
    "",
    "WHAT AN INCH BUYS (the plan of the rule of thumb, from the maker's depth on)",
    ...depthLines(report.depths),
    "",
    "WHAT IT COSTS",
    ...table([
      ["", "how much", "price", "money", ""],
      ...best.bill.lines.map((line) => [
        line.what,
        line.amount,
        line.price,
        line.money.toFixed(0),
        line.basis === "invented" ? "invented" : "",
      ]),
      ["together", "", "", best.bill.total.toFixed(0), ""],
    ]),
    "",
    "CHECKS OF THE CHOSEN DESIGN",
    ...table([
      ["check", "asked", "there is", "ratio", ""],
      ...best.checks
        .filter((c) => c.concrete !== "uncracked" && !c.id.includes("-design-"))
        .map((c) => [
          c.title,
          amount(c.demand),
          amount(c.capacity),
          Number.isFinite(c.ratio) ? c.ratio.toFixed(2) : "no limit",
          c.weight === "advice" ? "beside" : c.ratio > 1 ? "OVER" : "",
        ]),
    ]),
    ...(fold === "unfolded" ? workings(best) : []),
    "",
    ...wrap(
      "Margins are advice: the maker's page and the local code decide, and a licensed engineer where either asks for one.",
      "! ",
    ),
    ...wrap("Before anything is cut: make sure that there are no tendons, tubes or conduits in the slab.", "! "),
  ];
};

/** What is cast with a slab is counted beyond it. */
const concreteWords = ({ design, volumes }: PadAnswer): string =>
  `${amount(volumes.concrete)} ${design.join === "cast-with" ? "beyond the slab" : "in the forms"}`;
const amount = ({ value, unit }: Term): string => `${number(value)}${unit ? ` ${unit}` : ""}`;
const money = ({ bill }: PadAnswer): string => `${bill.currency}${Math.round(bill.total).toLocaleString("en-US")}`;
const margin = (value: number): string => (Number.isFinite(value) ? value.toFixed(2) : "no limit");

const marginWords = ({ figures: f }: PadAnswer): string =>
  `Margins: first crack ${margin(f.crack)}, collapse ${margin(f.collapse)}, anchors ${margin(f.anchors)} in cracked concrete, ground ${margin(f.ground)}.`;

const row = (answer: PadAnswer): string[] => [
  answer.words,
  amount(answer.volumes.concrete),
  money(answer),
  margin(answer.figures.crack),
  margin(answer.figures.collapse),
  margin(answer.figures.anchors),
  margin(answer.figures.ground),
];

const habitLines = (habit: PadAnswer | Unable, best: PadAnswer): string[] => {
  if (isUnable(habit)) return wrap(habit.reason);
  const more = habit.bill.total - best.bill.total;
  const beside = `${money(habit)}, ${Math.abs(Math.round(more))} ${more >= 0 ? "more" : "less"} than the design above.`;
  return [
    ...wrap(`${capital(habit.words)}: ${concreteWords(habit)}, ${beside}`),
    ...wrap(marginWords(habit)),
    ...wrap(
      habit.verdict === "meets"
        ? "It meets the page and the margins asked."
        : `It falls short: ${habit.short.join("; ")}.`,
    ),
  ];
};

const depthLines = (rows: readonly DepthRow[] | Unable): string[] => {
  if (isUnable(rows)) return wrap(rows.reason);
  return table([
    ["depth", "concrete", "times", "first crack", "collapse", "anchors", "ground"],
    ...rows.map(({ depth, concrete, concreteRatio, figures: f }) =>
      isUnable(f)
        ? [amount(depth), amount(concrete), concreteRatio.toFixed(2), f.reason]
        : [
            amount(depth),
            amount(concrete),
            concreteRatio.toFixed(2),
            `${margin(f.crack)}${f.crackIn === "slab" ? " (thin slab)" : ""}`,
            margin(f.collapse),
            margin(f.anchors),
            margin(f.ground),
          ],
    ),
  ]);
};

const workings = (best: PadAnswer): string[] => [
  "",
  "WORKINGS",
  ...[...best.margins, ...Object.values(best.volumes)].flatMap((term) => unfold(term, 1)),
  ...best.checks.flatMap((check) => [
    "",
    `${check.title}: ${number(check.ratio)} (${check.clause})`,
    ...(check.governs ? [`  ${check.governs}`] : []),
    ...unfold(check.demand, 1),
    ...unfold(check.capacity, 1),
  ]),
];

const unfold = (term: Term, depth: number): string[] => {
  const pad = "  ".repeat(depth);
  const formula = [term.formula && `= ${term.formula}`, term.worked && `= ${term.worked}`].filter(Boolean).join(" ");
  const born = [term.clause, term.basis].filter(Boolean).join("; ");
  return [
    `${pad}${term.symbol}  ${term.words}: ${amount(term)}`,
    ...(formula ? [`${pad}    ${formula}`] : []),
    ...(born ? [`${pad}    [${born}]`] : []),
    ...(term.from ?? []).flatMap((t) => unfold(t, depth + 1)),
  ];
};
