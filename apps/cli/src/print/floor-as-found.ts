import type { Assessment } from "@floorworthy/assess";
import type { NearestDistance, StrengthFinding, Survey, ThicknessGroup } from "@floorworthy/assess/facts";
import { section, table, wrap } from "./text.ts";
import { shownTerm, unfold } from "./unfold.ts";

/** What was read of the floor, beside the lines that decide; nothing where nothing was read. */
export const floorAsFound = ({ survey, page }: Assessment, fold: "folded" | "unfolded"): string[] => {
  if (!survey) return [];
  const lines = [...thickness(survey), ...strength(survey), ...distances(survey), ...cracks(survey)];
  return [
    ...(lines.length === 0 ? [] : ["", "THE FLOOR as found", ...(lines[0] === "" ? lines.slice(1) : lines)]),
    ...(fold === "unfolded" ? workings(survey, page) : []),
  ];
};

const thickness = ({ thickness: { groups, refused, order } }: Survey): string[] =>
  groups.length === 0 && refused.length === 0
    ? []
    : [
        ...table([["readings", "", "mean", "spread", "lower bound"], ...groups.map(groupRow)]),
        ...(groups.some(({ bound }) => bound)
          ? wrap(
              "The lowest reading decides, not the mean. Lower bound: 90 % of the concrete is thicker, said with 75 % confidence.",
              "  ",
            )
          : []),
        ...groups.flatMap(({ name, unable, more }) => {
          const words = unable ? unable.reason : more;
          return words ? wrap(`${name}: ${words}`, "- ") : [];
        }),
        ...order.flatMap((t) => wrap(`${t.words}: ${shownTerm(t)}`, "- ")),
        ...refused.flatMap((reason) => wrap(reason, "- ")),
      ];

const groupRow = ({ name, count, open, terms, bound }: ThicknessGroup): string[] => {
  const of = (symbol: string): string => {
    const found = terms.find((t) => t.symbol === symbol);
    return found ? shownTerm(found) : "";
  };
  return [name, `${count}${open > 0 ? `, ${open} open` : ""}`, of("t̄"), of("s"), bound ? shownTerm(bound) : ""];
};

const strength = ({ strength: found }: Survey): string[] => {
  const worth = found.filter(({ from, notes }) => from === "cores" || from === "cylinders" || notes.length > 0);
  return worth.flatMap((finding) => [
    ...section(`Strength under ${finding.under.replace(/^(left|right)/, "the $1")}`, strengthLines(finding)),
  ]);
};

const strengthLines = ({ shown, workings, why, beside, notes }: StrengthFinding): string[] => [
  `${shown === undefined ? "not shown; " : ""}${shownTerm(workings)} counts: ${why}`,
  ...beside.map((t) => `${t.words}: ${shownTerm(t)}`),
  ...notes,
];

const distances = ({ distances: found }: Survey): string[] =>
  found.length === 0
    ? []
    : [
        "",
        ...table([
          ["nearest to each base", "from", "anchor", "plate edge"],
          ...found.map(({ side, to, anchor, plate }: NearestDistance) => [
            to,
            `${side} base`,
            anchor ? `${shownTerm(anchor.distance)} (${anchor.id})` : "",
            plate ? (plate.value === 0 ? "under it" : shownTerm(plate)) : "",
          ]),
        ]),
      ];

const cracks = ({ cracks: found }: Survey): string[] =>
  section(
    "Cracks",
    found.map(({ name, words }) => `${name}: ${words}`),
  );

const workings = ({ thickness: { groups }, strength: found }: Survey, page: Assessment["page"]): string[] => [
  "",
  "WORKINGS OF THE FLOOR",
  ...page.lines.flatMap(({ demand }) => (demand?.from ? unfold(demand, 1) : [])),
  ...groups.flatMap(({ bound }) => (bound ? unfold(bound, 1) : [])),
  ...found.flatMap(({ workings: own, beside }) => [own, ...beside].flatMap((t) => unfold(t, 1))),
];
