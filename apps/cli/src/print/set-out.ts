import type { SetOut } from "@floorworthy/assess/setout";
import type { ShimPlan } from "@floorworthy/assess/shims";
import { printInUnit, type Term, type UnitSystem } from "@floorworthy/engine/quantities";
import { number, table, wrap } from "./text.ts";
import { unfold } from "./unfold.ts";

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];

/** Lengths as they are read off a tape, to 1/16 in or whole mm. */
export const tape = (term: Term | undefined): string =>
  !term
    ? "not known"
    : term.unit === "in"
      ? printInUnit(term.value, "in", { fraction: 16 })
      : term.unit === "mm"
        ? printInUnit(term.value, "mm", { precision: term.value < 10 ? 1 : 0 })
        : printInUnit(term.value, term.unit);

/** May holes be drilled; then the marks, the squareness, the hole, shims, torque and the order of work. */
export const setOutLines = (s: SetOut, shims: ShimPlan, units: UnitSystem, fold: "folded" | "unfolded"): string[] => [
  s.title,
  "",
  s.drilling === "may-drill" ? "SET OUT AND DRILL" : "MARKS ONLY, NOTHING IS DRILLED YET",
  ...section(s.drilling === "may-drill" ? "Before the first hole" : "Nothing is drilled before", s.before),
  "",
  `From the ${s.walls.x} and the ${s.walls.y}${units === "si" ? "" : ", to 1/16 in"}`,
  ...table([
    ["", `from the ${s.walls.x}`, `from the ${s.walls.y}`],
    ...[...s.columns, ...s.holes].map((mark) => [mark.id, tape(mark.x), tape(mark.y)]),
  ]),
  "",
  "Square",
  ...table([
    ...(s.spacing ? [[s.spacing.words, tape(s.spacing)]] : []),
    ...s.square.flatMap((c) => c.diagonals.map((d) => [d.length.words, tape(d.length)])),
    ...s.tolerances.map((t) => [`${t.words}, at most`, tape(t)]),
  ]),
  "",
  "Each hole",
  ...table(holeRows(s)),
  ...(fold === "unfolded"
    ? [
        "",
        "Workings",
        ...s.hole.checks.flatMap((c) => [`${c.title} (${c.clause})`, ...unfold(c.demand, 1), ...unfold(c.capacity, 1)]),
      ]
    : []),
  "",
  "Shims",
  ...shimLines(shims),
  "",
  "Torque, by hand wrench, crosswise",
  ...table([
    ...s.torque.rounds.map((t) => [t.words, `${number(t.value)} ${t.unit}`]),
    ...(s.torque.full ? [] : [["torque", "not known"]]),
    ...s.torque.patterns.map(({ side, order }) => [`${side} base`, order.join(", ")]),
  ]),
  ...section("Order of work", s.order),
];

const holeRows = ({ hole }: SetOut): string[][] => [
  ...[
    hole.diameter,
    hole.depth,
    hole.bitMark,
    hole.bitMarkThroughPlate,
    hole.nominal,
    hole.effective,
    hole.thickness,
    hole.coverBelow,
    hole.length,
    hole.projection,
    hole.plate,
    hole.washer,
    hole.nut,
    hole.threads,
    hole.shims,
    hole.shimRoom,
  ]
    .filter((t) => t !== undefined)
    .map((t) => [t.words, tape(t)]),
  ...hole.checks.map((c) => [
    c.title,
    c.ratio <= 1 + 1e-9 ? "kept" : c.weight === "limit" ? "NOT KEPT" : `less than the usual ${tape(c.demand)}`,
  ]),
];

const shimLines = ({ bases, between, advice }: ShimPlan): string[] => [
  ...table([
    ["base", "corner or anchor", "gap", "stack"],
    ...bases.flatMap((base) => [
      ...(base.bedding === "not-measured" ? [[base.side, "not measured", "", ""]] : []),
      ...[...base.corners, ...base.anchors].map((p) => [
        base.side,
        p.id,
        tape(p.gap),
        p.stack.shims.length === 0 ? "none" : p.stack.shims.map((mm) => shimWords(mm, p.gap.unit)).join(" + "),
      ]),
    ]),
  ]),
  ...table([
    ...bases.flatMap((base) =>
      [base.headBefore, base.headAfter, base.grout]
        .filter((t) => t !== undefined)
        .map((t) => [`${base.side}: ${t.words}`, tape(t)]),
    ),
    ...(between ? [[between.words, tape(between)]] : []),
    ["", ""],
  ]).filter((line) => line.trim() !== ""),
  ...advice.flatMap((line) => wrap(line, "- ")),
];

const shimWords = (mm: number, unit: Term["unit"]): string =>
  unit === "in" ? printInUnit(mm / 25.4, "in", { fraction: 16 }) : `${mm} mm`;
