import type { HeightLoads, VehicleAnswer } from "@floorworthy/assess/vehicle";
import { printQuantity, type UnitSystem } from "@floorworthy/engine/quantities";
import { number, table, wrap } from "./text.ts";
import { shownTerm, unfold } from "./unfold.ts";

type Fold = "folded" | "unfolded";

const answers = { yes: "YES", "retorque-first": "RE-TORQUE FIRST", hold: "HOLD", no: "NO" } as const;

/** The answer first; figures only where they are no false comfort. */
export const vehicleLines = (a: VehicleAnswer, units: UnitSystem, fold: Fold): string[] => [
  `${a.vehicle}, ${a.today}`,
  "",
  answers[a.answer],
  ...wrap(a.sentence),
  ...section("Why", a.reasons),
  ...section("When it is lifted", a.conditions),
  ...rated(a),
  ...heights(a.heights, units),
  ...section(
    "Each arm",
    a.arms.map((term) => `${term.words} ${shownTerm(term)}`),
  ),
  ...section(
    "Where it stands",
    a.place.map((term) => `${term.words}: ${shownTerm(term)}`),
  ),
  ...floor(a),
  ...section("Taken where nobody knows", a.assumed),
  ...(fold === "unfolded" ? workings(a, units) : []),
  "",
  ...wrap(
    "This compares weights and floors and gives advice; it approves nothing. The maker's manual and the data plate come first.",
    "! ",
  ),
];

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];

const rated = ({ rated: check }: VehicleAnswer): string[] =>
  check
    ? [
        "",
        "Against the data plate",
        ...table([
          ["weight", shownTerm(check.demand), "rated", shownTerm(check.capacity), `${Math.round(check.ratio * 100)} %`],
        ]),
      ]
    : [];

const padWords = { car: "sills", "frame-truck": "frame rails" } as const;

/** Both bases carry the same while the weight is shared evenly. */
const heights = (rows: readonly HeightLoads[], units: UnitSystem): string[] => {
  if (rows.length === 0) return [];
  const print = (value: number, what: "length" | "force" | "moment") =>
    printQuantity(value, what, { system: units, precision: what === "force" && units === "si" ? 1 : 0 });
  return [
    "",
    "What comes down on each base, weight shared evenly (moments: + presses inward, + toward the door)",
    ...table([
      ["carriage at", "lifted at", "load", "moment across", "moment along", "beam pressed"],
      ...rows.map(({ height, pads, left, strutForce }) => [
        print(height, "length"),
        padWords[pads],
        print(left.P, "force"),
        print(left.inwardMoment, "moment"),
        print(left.foreAftMoment, "moment"),
        print(strutForce, "force"),
      ]),
    ]),
  ];
};

const MOST = 5;

const floor = ({ checks, side }: VehicleAnswer): string[] =>
  checks.length === 0
    ? []
    : [
        "",
        `The floor under this vehicle${side === undefined ? "" : side === "both" ? "; both bases are alike" : `; the ${side} base governs`} (advice; the page decides)`,
        ...table([
          ["check", "asked", "there is", "ratio", ""],
          ...checks
            .slice(0, MOST)
            .map((check) => [
              `${check.title}${check.concrete ? `, ${check.concrete}` : ""}`,
              shownTerm(check.demand),
              shownTerm(check.capacity),
              number(check.ratio),
              check.ratio > 1 ? "OVER" : "",
            ]),
        ]),
      ];

const workings = (a: VehicleAnswer, units: UnitSystem): string[] => [
  "",
  "WORKINGS",
  ...(a.rated ? [...unfold(a.rated.demand, 1), ...unfold(a.rated.capacity, 1)] : []),
  ...[...a.arms, ...a.place].flatMap((term) => unfold(term, 1)),
  ...a.heights.flatMap(({ height, terms }) => [
    `  Carriage at ${printQuantity(height, "length", { system: units, precision: 0 })}`,
    ...terms.flatMap((term) => unfold(term, 2)),
  ]),
  ...a.checks
    .slice(0, MOST)
    .flatMap((check) => [
      "",
      `  ${check.title} (${check.clause})`,
      ...unfold(check.demand, 2),
      ...unfold(check.capacity, 2),
    ]),
];
