import { firstLook } from "@floorworthy/assess";
import { crossPattern } from "@floorworthy/assess/setout";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { fromBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { JobPlan, Question, Step } from "../question.ts";
import { cardUnits, factWords, flats, lengthHand } from "./words.ts";

/** The nuts in the cross order of each base; what the years say is said at each of them. */
export const torquePlan = (job: Job, date: string): JobPlan => {
  const { bases } = firstLook(job).layout;
  const upkeep = upkeepOf(job, date);
  const { torque } = job.lift.anchors;
  const unit = cardUnits(job.units).torque;
  const set = torque.known ? `${Math.round(fromBase(torque.value, unit))} ${unit}` : undefined;
  const nuts = bases.flatMap((base) =>
    crossPattern(base.anchors).map(
      (id, i): Step => ({
        id,
        name: id,
        where: [`${base.side} base, ${i + 1} of ${base.anchors.length} in the cross order`],
        figures: set ? [{ words: "set to", figure: set }] : [],
        questions: questions(job, id, set),
        fixed: { anchor: id },
        note: `anchor ${id}`,
      }),
    ),
  );
  const out = upkeep.answer === "out-of-service" || upkeep.answer === "stopped";
  return {
    title: job.title,
    units: job.units,
    date,
    sentence: upkeep.sentence,
    open: nuts.length > 0 ? "all" : "none",
    stop:
      nuts.length === 0
        ? ["No nut has a name yet: the place of the columns or the hole pattern of the base plate is not known."]
        : out
          ? [upkeep.sentence, ...upkeep.reasons, ...upkeep.steps]
          : [],
    before: [...upkeep.torqueSays],
    steps: nuts.length === 0 ? [] : [roundStep(job), ...nuts],
    says: Object.fromEntries(
      upkeep.anchors
        .filter(({ answer }) => answer !== "not-read")
        .map(({ anchor, sentence, answer }) => [
          anchor.toUpperCase(),
          {
            words: sentence,
            weight: answer === "out-of-service" ? "stop" : answer === "retorque-and-look" ? "look" : "calm",
          } as const,
        ]),
    ),
  };
};

const roundStep = ({ units, visits }: Job): Step => ({
  id: "round",
  name: "This round",
  where: ["Lift lowered, no vehicle on it. A checked torque wrench, never an impact wrench."],
  figures: [],
  questions: [
    { key: "wrench", ask: "Which wrench", kind: "words", last: visits.at(-1)?.wrench },
    { key: "who", ask: "Who goes round", kind: "words", last: visits.at(-1)?.who },
    {
      key: "temperature",
      ask: "Temperature of the room",
      kind: "quantity",
      dimension: "temperature",
      unit: cardUnits(units).temperature,
      usual: [-30, 50],
    },
    { key: "date", ask: "Another day than today", kind: "words", type: "date", rank: "rare" },
  ],
  fixed: {},
  note: "round of the nuts",
});

const questions = (job: Job, id: string, set: string | undefined): readonly Question[] => {
  const { units } = job;
  const unit = cardUnits(units);
  const read = job.visits
    .flatMap(({ date, readings }) => readings.map((reading) => ({ ...reading, date })))
    .filter(({ anchor }) => anchor.trim().toUpperCase() === id.toUpperCase());
  const last = read.at(-1);
  const on = (words: string | undefined) => (words && last ? `${words} on ${last.date}` : undefined);
  return [
    {
      key: "found",
      ask: "Torque found",
      last: on(factWords(last?.found, unit.torque, units)),
      kind: "quantity",
      dimension: "moment",
      unit: unit.torque,
      usual: [0, 800_000],
      ...(set && { picks: [{ value: set, words: `full, ${set}` }] }),
    },
    {
      key: "turned",
      ask: "Turned to restore it",
      last: on(factWords(last?.turned, "deg", units)),
      kind: "quantity",
      dimension: "angle",
      unit: "deg",
      usual: [0, 2 * Math.PI],
      picks: flats,
    },
    {
      key: "state",
      ask: "Does it hold",
      last: on(last?.state?.known ? last.state.value : undefined),
      kind: "choice",
      choices: [
        { value: "holds", words: "holds" },
        { value: "spins", words: "spins" },
        { value: "snapped", words: "snapped" },
        { value: "missing", words: "missing" },
      ],
    },
    {
      key: "sound",
      ask: "Tapped with a hammer",
      last: on(last?.sound?.known ? last.sound.value : undefined),
      kind: "choice",
      choices: [
        { value: "solid", words: "solid" },
        { value: "hollow", words: "hollow" },
      ],
    },
    {
      key: "projection",
      ask: "Stud above the plate",
      last: on(factWords(last?.projection, unit.length, units)),
      kind: "quantity",
      dimension: "length",
      unit: unit.length,
      usual: [3, 150],
      ...(units === "si" ? {} : lengthHand(units)),
    },
    { key: "note", ask: "Anything seen", kind: "words", last: last?.note },
  ];
};
