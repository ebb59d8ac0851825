import type { Assessment } from "@floorworthy/assess";
import { type Mark, setOut } from "@floorworthy/assess/setout";
import { tapeWords } from "@floorworthy/assess/survey";
import { isUnable, printFraction, type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { printed } from "../../quantities/shown.ts";
import type { JobPlan, Question, Step } from "../question.ts";
import { cardUnits, factWords, flats, lengthHand } from "./words.ts";

/** Hole by hole as set out; nothing is begun where the set-out is refused, or a hole of the record is not settled. */
export const installationPlan = (job: Job, date: string, assessment: Assessment): JobPlan => {
  const marks = setOut(job, assessment);
  const common = { title: job.title, units: job.units, date, says: {} };
  if (isUnable(marks))
    return {
      ...common,
      sentence: "No hole is drilled for this lift.",
      open: "recorded-only",
      stop: ["No hole is drilled for this lift.", marks.reason],
      before: [],
      steps: [],
    };
  const may = marks.drilling === "may-drill";
  const { depth, diameter } = marks.hole;
  const full = marks.torque.full;
  return {
    ...common,
    sentence: may ? "Mark it out, then drill." : "Mark it out; do not drill yet.",
    open: may ? "all" : "recorded-only",
    stop: may ? [] : ["Do not drill.", ...marks.before],
    before: [...(may ? marks.before : []), ...marks.order],
    steps: [
      settingStep(job, date),
      ...marks.holes.map((mark) => holeStep(job, mark, marks.walls, { depth, diameter, full })),
    ],
  };
};

const settingStep = ({ installation }: Job, date: string): Step => ({
  id: "setting",
  name: "The setting",
  where: ["who sets it, with what"],
  figures: [],
  questions: [
    {
      key: "installation.date",
      ask: "Day",
      last: installation?.date,
      kind: "choice",
      choices: [{ value: date, words: `today, ${date}` }],
    },
    { key: "installation.installer", ask: "Who sets it", last: installation?.installer, kind: "words" },
    { key: "installation.wrench", ask: "Which torque wrench", last: installation?.wrench, kind: "words" },
    { key: "installation.lot", ask: "Anchors and their lot", last: installation?.lot, kind: "words" },
  ],
  fixed: { list: "" },
  note: "the setting",
});

interface Asked {
  readonly depth: Term | undefined;
  readonly diameter: Term | undefined;
  readonly full: Term | undefined;
}

const inWords = ({ value, unit }: Term): string =>
  unit === "in" ? `${printFraction(value, 16)} in` : printed(Math.round(value * 10) / 10, unit);

const holeStep = (job: Job, mark: Mark, walls: { x: string; y: string }, asked: Asked): Step => ({
  id: mark.id,
  name: mark.id,
  where: [`${mark.side} base`],
  figures: [
    { words: `from the ${walls.x}`, figure: tapeWords(mark.at.x, job.units) },
    { words: `from the ${walls.y}`, figure: tapeWords(mark.at.y, job.units) },
    ...(asked.depth ? [{ words: "depth asked", figure: inWords(asked.depth) }] : []),
    ...(asked.diameter ? [{ words: "bit", figure: inWords(asked.diameter) }] : []),
  ],
  questions: questions(job, mark.id, asked),
  fixed: { anchor: mark.id },
  ...(asked.depth && { depthAsked: toBase(asked.depth.value, asked.depth.unit) }),
  note: `hole ${mark.id}`,
});

const questions = (job: Job, id: string, { depth, full }: Asked): readonly Question[] => {
  const { units } = job;
  const unit = cardUnits(units);
  const there = job.installation?.holes.find(({ anchor }) => anchor.trim().toUpperCase() === id.toUpperCase());
  const length = { kind: "quantity", dimension: "length", unit: unit.length, ...lengthHand(units) } as const;
  return [
    {
      key: "met",
      ask: "What the drill met",
      last: there?.met.known ? there.met.value : undefined,
      kind: "choice",
      choices: [
        { value: "nothing", words: "nothing" },
        { value: "bar", words: "a bar" },
        { value: "void", words: "a hollow" },
        { value: "tube", words: "a tube" },
        { value: "conduit", words: "a conduit" },
        { value: "tendon", words: "a tendon" },
      ],
    },
    {
      key: "depth",
      ask: "Depth of the hole",
      last: factWords(there?.depth, unit.length, units),
      ...length,
      usual: [25, 600],
      ...(depth && { picks: [{ value: inWords(depth), words: `as asked, ${inWords(depth)}` }] }),
    },
    {
      key: "clean",
      ask: "Brushed and blown",
      last: there?.clean.known ? there.clean.value : undefined,
      kind: "choice",
      choices: [
        { value: "yes", words: "yes" },
        { value: "no", words: "not yet" },
      ],
    },
    {
      key: "projection",
      ask: "Bolt above the plate",
      last: factWords(there?.projection, unit.length, units),
      ...length,
      usual: [3, 150],
    },
    {
      key: "torque",
      ask: "Torque reached",
      last: factWords(there?.torque, unit.torque, units),
      kind: "quantity",
      dimension: "moment",
      unit: unit.torque,
      usual: [5_000, 800_000],
      ...(full && {
        picks: [
          { value: `${Math.round(full.value)} ${full.unit}`, words: `full, ${Math.round(full.value)} ${full.unit}` },
        ],
      }),
    },
    {
      key: "turned",
      ask: "Turned from snug",
      last: factWords(there?.turned, "deg", units),
      rank: "rare",
      kind: "quantity",
      dimension: "angle",
      unit: "deg",
      picks: flats,
    },
  ];
};
