import { polygonDistance, type Segment } from "@floorworthy/engine/geometry";
import type { Crack, Job } from "@floorworthy/job";
import { placedBases } from "../layout.ts";
import { daysBetween } from "./calendar.ts";
import { shown } from "./print.ts";
import type { CrackFinding } from "./survey-answer.ts";

/** Width in which qualified anchors are tested: 0.3 mm; ACI 355.2, from memory. */
const HAIRLINE = 0.3;
/** From this width a crack is a free edge with a cause; common practice, no source: 1/16 in. */
const WIDE = 25.4 / 16;
/** A difference of level a straightedge shows; common practice, no source. */
const STEP = 0.5;
/** What two readings of a crack card may differ by, and of a tape along a crack, mm; common practice, no source. */
const [WIDTH_READING, LENGTH_READING] = [0.1, 25];

export const crackFindings = (job: Job): readonly CrackFinding[] =>
  job.floor.cracks.map((crack) => finding(job, crack));

const finding = (job: Job, crack: Crack): CrackFinding => {
  const [look, growth] = [lookOf(crack), growthOf(job, crack)];
  const nearest = nearestBase(job, crack);
  return {
    name: crack.name,
    look,
    growth: growth.kind,
    nearest,
    words: [lookWords(job, crack, look), growth.words].filter(Boolean).join("; "),
  };
};

const lookOf = ({ width, step }: Crack): CrackFinding["look"] => {
  if (step.known && step.high > STEP) return "stepped";
  if (!width.known) return "unknown";
  if (width.high > WIDE) return "wide";
  return width.high <= HAIRLINE && step.known ? "hairline" : "open";
};

const lookWords = ({ units }: Job, { width, step }: Crack, look: CrackFinding["look"]): string => {
  const wide = width.known ? `${thin(width.high, units)} wide` : "width not measured";
  switch (look) {
    case "hairline":
      return `hairline, ${wide}, no step`;
    case "stepped":
      return `${wide}, one side ${thin(step.known ? step.high : 0, units)} higher: the ground has moved under it`;
    case "wide":
      return `${wide}: an edge, and somebody has to say what opened it`;
    case "open":
      return step.known ? `${wide}: an edge` : `${wide}, whether it has a step is not known: an edge`;
    case "unknown":
      return `${wide}: an edge until somebody measures it`;
  }
};

const thin = (mm: number, units: Job["units"]): string =>
  units === "si" ? `${Math.round(mm * 10) / 10} mm` : `${Math.round((mm / 25.4) * 1000) / 1000} in`;

/** From the dated looks, and the crack as the job has it where the job has a date. */
const growthOf = (job: Job, crack: Crack): { kind: CrackFinding["growth"]; words: string } => {
  const now = job.date ? [{ on: job.date, width: crack.width, length: { known: false } as const }] : [];
  const looks = [...crack.seen, ...now].toSorted((a, b) => a.on.localeCompare(b.on));
  const widths = looks.flatMap(({ on, width }) => (width.known ? [{ on, mm: width.value }] : []));
  const lengths = looks.flatMap(({ on, length }) => (length.known ? [{ on, mm: length.value }] : []));
  const wider = change(widths);
  const longer = change(lengths);
  if (!wider && !longer) return { kind: "not-watched", words: "" };
  const grows = (wider && wider.mm > WIDTH_READING) || (longer && longer.mm > LENGTH_READING);
  if (!grows) return { kind: "still", words: `no growth seen since ${(wider ?? longer)!.from}` };
  const by = wider && wider.mm > WIDTH_READING ? { ...wider, word: "wider" } : { ...longer!, word: "longer" };
  const size = by.word === "wider" ? thin(by.mm, job.units) : shown(by.mm, "length", job.units);
  return { kind: "grows", words: `it grows: ${size} ${by.word} in ${by.days} days since ${by.from}` };
};

/** From the first look to the last, or the last fall's bottom to the last: what counts is where it stands against its least. */
const change = (looks: readonly { on: string; mm: number }[]) => {
  const last = looks.at(-1);
  const before = looks.slice(0, -1).filter(({ on }) => last && on < last.on);
  if (!last || before.length === 0) return undefined;
  const least = before.reduce((a, b) => (b.mm < a.mm ? b : a));
  return { mm: last.mm - least.mm, from: least.on, days: daysBetween(least.on, last.on) };
};

export const crackSegments = (crack: Crack): readonly Segment[] =>
  crack.line.slice(1).map((b, i) => ({ a: crack.line[i]!, b }));

const nearestBase = (job: Job, crack: Crack): CrackFinding["nearest"] =>
  placedBases(job)
    .filter(({ outline }) => outline.length >= 3)
    .map(({ side, outline }) => ({
      side,
      distance: Math.min(...crackSegments(crack).map(({ a, b }) => polygonDistance([a, b], outline))),
    }))
    .filter(({ distance }) => Number.isFinite(distance))
    .toSorted((a, b) => a.distance - b.distance)[0];
