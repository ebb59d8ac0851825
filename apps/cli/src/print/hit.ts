import type { HitAdvice, HitWay } from "@floorworthy/assess/hit";
import { tape } from "./set-out.ts";
import { wrap } from "./text.ts";
import { unfold } from "./unfold.ts";

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];

/** Verdict first; then why, the ways on with their ratios, what never, and what to write down. */
export const hitLines = (a: HitAdvice, fold: "folded" | "unfolded"): string[] => [
  a.title,
  "",
  a.verdict === "accept-if" ? "ACCEPT-IF" : `STOP: ${a.verdict.toUpperCase()}`,
  ...wrap(a.sentence),
  ...section("Why", a.reasons),
  ...section(
    "What must happen",
    a.stops.map((s) => s.next),
  ),
  ...section("The hole", [`${a.hole.id} met ${a.hole.met}`, ...a.terms.map((t) => `${t.words}: ${tape(t)}`)]),
  ...a.ways.flatMap((way) => wayLines(way, fold)),
  ...section("Never", a.never),
  ...section("Write down", a.record),
];

const states = { open: "", "ask-first": " (ask the owner first)", closed: " (closed)" } as const;

const wayLines = (way: HitWay, fold: "folded" | "unfolded"): string[] => [
  ...section(`${way.title}${states[way.state]}`, [
    way.why,
    ...way.terms.map((t) => `${t.words}: ${tape(t)}`),
    ...(way.checkWords ? [way.checkWords] : []),
    ...way.steps,
  ]),
  ...(fold === "unfolded" && way.check ? [...unfold(way.check.demand, 2), ...unfold(way.check.capacity, 2)] : []),
];
