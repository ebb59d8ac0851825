import type { Assessment, MarginCheck, PageLine } from "@floorworthy/assess";
import { capital } from "@floorworthy/engine/quantities";
import { floorAsFound } from "./floor-as-found.ts";
import { number, section, table, wrap } from "./text.ts";
import { shownTerm, unfold } from "./unfold.ts";

type Fold = "folded" | "unfolded";

/** Outcome first, in plain sentences; then the page, then the margin, never merged. */
export const answerLines = (a: Assessment, fold: Fold): string[] => [
  a.title,
  "",
  `${a.outcome.toUpperCase()}`,
  ...wrap(a.sentence),
  ...section("Why", a.reasons),
  ...section("Before it holds", a.conditions),
  ...missing(a),
  "",
  "THE MAKER'S PAGE decides",
  ...pageTable(a.page.lines),
  ...manualLines(a.page.lines),
  ...floorAsFound(a, fold),
  "",
  "THE MARGIN advises",
  ...wrap(a.margin.sentence),
  ...marginTable(a.margin),
  ...section(
    "How far the column heads lean under load",
    a.margin.lean.map((t) => `${t.words}: ${shownTerm(t)}`),
  ),
  ...information(a),
  ...remedies(a),
  ...(fold === "unfolded" ? workings(a) : []),
  "",
  ...a.cautions.flatMap((caution) => wrap(caution, "! ")),
];

const missing = ({ missing: facts, settling }: Assessment): string[] =>
  section("What to find out next", [
    ...(settling && facts.length > 1 ? [settling.sentence] : []),
    ...facts.map(
      (fact) => `${fact.what}: at worst ${fact.worst}, at best ${fact.best}. ${capital(fact.how)} (${fact.cost}).`,
    ),
  ]);

const pageTable = (lines: readonly PageLine[]): string[] => {
  const asked = lines.filter((line) => line.result !== "not-asked");
  if (asked.length === 0) return ["No line of the page is known."];
  const marks = { meets: "meets", fails: "FAILS", "not-shown": "not shown", "not-asked": "" };
  return table([
    ["line", "the maker asks", "there is", ""],
    ...asked.map((line) => [line.title, line.asked, line.found, marks[line.result]]),
  ]);
};

/** The manual's own words, where somebody kept them. */
const manualLines = (lines: readonly PageLine[]): string[] =>
  section(
    "The manual prints",
    lines.flatMap(({ title, manual }) => {
      if (!manual?.line) return [];
      const where = [manual.document, manual.page && `page ${manual.page}`].filter(Boolean).join(", ");
      return [`${title}: "${manual.line}"${where && ` (${where})`}`];
    }),
  );

const marginTable = ({ checks, best }: Assessment["margin"]): string[] =>
  checks.length === 0
    ? []
    : table([
        ["check", "asked", "there is", "ratio", "at best", ""],
        ...checks.map((check) => row(check, best.find(({ id }) => id === check.id)?.ratio)),
      ]);

const row = (check: MarginCheck, best?: number): string[] => [
  check.title + (check.concrete ? `, ${check.concrete}` : ""),
  shownTerm(check.demand),
  shownTerm(check.capacity),
  ratioText(check.ratio),
  best === undefined || ratioText(best) === ratioText(check.ratio) ? "" : ratioText(best),
  check.weight === "advice" ? "beside" : check.ratio > 1 ? "OVER" : "",
];

const ratioText = (ratio: number): string => (Number.isFinite(ratio) ? ratio.toFixed(2) : "no limit");

const information = ({ margin }: Assessment): string[] => {
  const worst = margin.information
    .filter((check) => check.concrete !== "uncracked" && Number.isFinite(check.ratio))
    .toSorted((a, b) => b.ratio - a.ratio);
  const kinds = [
    [
      "Beside it, in hard use (60/40 on the pads or between the columns, stopped hard)",
      worst.filter((c) => c.id.startsWith("hard-use-")),
    ],
    [
      "Beside it, for information (as if the beam were missing, one pad carrying nothing)",
      worst.filter((c) => c.id.startsWith("information-")),
    ],
  ] as const;
  return kinds.flatMap(([title, checks]) =>
    checks.length === 0 ? [] : ["", title, ...table(checks.slice(0, 4).map((check) => row(check)))],
  );
};

const remedies = (a: Assessment): string[] =>
  section(
    "What to pour instead",
    a.remedies.map(
      ({ title, detail, volume, terms }) =>
        `${title}${volume ? `, ${shownTerm(volume)} to order` : ""}. ${detail} ${terms
          .slice(1)
          .map((t) => `${t.words}: ${shownTerm(t)}.`)
          .join(" ")}`,
    ),
  );

const workings = (a: Assessment): string[] => [
  "",
  "WORKINGS",
  ...a.margin.checks.flatMap((check) => [
    "",
    `${check.title}${check.concrete ? `, ${check.concrete} concrete` : ""}: ${number(check.ratio)} (${check.clause})`,
    `  ${check.governs ?? ""}`,
    ...unfold(check.demand, 1),
    ...unfold(check.capacity, 1),
  ]),
  "",
  "Loads on the bases",
  ...a.margin.cases.flatMap((c) => [
    `  ${c.name}${c.counted === "counted" ? "" : " (not counted)"}`,
    ...c.bases.flatMap((base) => [`    ${base.side} base`, ...base.terms.flatMap((t) => unfold(t, 3))]),
  ]),
];
