import { firstLook } from "@floorworthy/assess";
import { planSurvey, type SurveyHole, tapeWords, termWords } from "@floorworthy/assess/survey";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { JobPlan, Question, Step } from "../question.ts";
import { cardUnits, lengthHand, placeWritten } from "./words.ts";

/** Where to drill and what to write down. Under a stop no place for a hole is named. */
export const drillPlan = (job: Job, date: string): JobPlan => {
  const plan = planSurvey(job, firstLook(job));
  const common = { title: job.title, units: job.units, date, says: {}, before: [] };
  if (isUnable(plan)) return { ...common, sentence: plan.reason, open: "none", stop: [plan.reason], steps: [] };
  const { drilling, sentence, holes, first, stops, cautions, instead, mark, answered, dropped } = plan;
  const depth = isUnable(mark) ? undefined : termWords(mark);
  const looks: readonly Step[] =
    first.length > 0
      ? [
          {
            id: "look-first",
            name: "Look first",
            where: ["No hole before every look is done and clear."],
            figures: [],
            questions: first.map(({ what, how }, i) => ({
              key: `look-${i}`,
              ask: what,
              hint: how,
              kind: "choice",
              choices: [
                { value: "clear", words: "seen, clear" },
                { value: "open", words: "not clear" },
              ],
            })),
            fixed: {},
            note: "the floor before drilling",
            is: "looks",
          },
        ]
      : [];
  return {
    ...common,
    sentence,
    open: drilling === "forbidden" || drilling === "nothing-to-drill" ? "none" : "all",
    stop:
      drilling === "forbidden"
        ? ["No hole is drilled in this floor.", ...instead]
        : drilling === "nothing-to-drill"
          ? [sentence, ...instead]
          : [],
    before: [
      ...stops.map((stop) => `Stop: ${stop}`),
      ...cautions,
      ...answered.map(({ where, by }) => `No hole needed at the ${where}: ${by}`),
      ...dropped.map(({ where, why }) => `No lawful hole at the ${where}: ${why}`),
    ],
    steps: [...looks, ...holes.map((hole) => holeStep(job, hole, depth))],
  };
};

const holeStep = (job: Job, hole: SurveyHole, mark: string | undefined): Step => {
  const { units } = job;
  const { number, at, where, side, moved } = hole;
  const near =
    side === "left" || side === "right" ? side : side === undefined && /mid/.test(where) ? "middle" : undefined;
  return {
    id: `hole-${number}`,
    name: `Hole ${number}`,
    where: [where, ...(moved ? [moved] : [])],
    figures: [
      { words: "from the left wall", figure: tapeWords(at.x, units) },
      { words: "from the back wall", figure: tapeWords(at.y, units) },
      ...(mark ? [{ words: "mark on the bit", figure: mark }] : []),
    ],
    questions: questions(job, mark),
    fixed: { at: [placeWritten(at.x, units), placeWritten(at.y, units)], ...(near && { near }) },
    note: `hole ${number}, ${where}`,
  };
};

const questions = ({ units }: Job, mark: string | undefined): readonly Question[] => {
  const unit = cardUnits(units).length;
  const length = { kind: "quantity", dimension: "length", unit, ...lengthHand(units) } as const;
  return [
    {
      key: "end",
      ask: "How it ended",
      kind: "choice",
      choices: [
        { value: "through", words: "through, underside hooked" },
        { value: "still-concrete", words: "mark flush, still concrete" },
        { value: "dropped", words: "dropped before the mark" },
      ],
    },
    {
      key: "thickness",
      ask: "Depth",
      ...length,
      usual: [25, 1000],
      ...(mark && { picks: [{ value: mark, words: `at the mark, ${mark}` }] }),
    },
    {
      key: "under",
      ask: "Under the concrete",
      kind: "choice",
      choices: [
        { value: "gravel", words: "gravel" },
        { value: "sand", words: "sand" },
        { value: "clay", words: "clay" },
        { value: "soil", words: "soil" },
        { value: "void", words: "a hollow" },
        { value: "wet", words: "water, mud" },
        { value: "foam", words: "foam" },
        { value: "vapour-sheet", words: "plastic sheet" },
      ],
    },
    {
      key: "out",
      ask: "What came out",
      kind: "choice",
      choices: [
        { value: "dust", words: "grey or brown dust" },
        { value: "foam crumbs", words: "foam crumbs" },
        { value: "sparks, steel", words: "sparks: steel" },
        { value: "plastic or wire", words: "plastic, wire" },
        { value: "water", words: "water, a smell" },
      ],
    },
    { key: "note", ask: "Anything seen", kind: "words" },
    { key: "layer", ask: "Screed or tile in it", ...length, rank: "rare" },
    { key: "x", ask: "As drilled, from the left wall", ...length, rank: "rare" },
    { key: "y", ask: "As drilled, from the back wall", ...length, rank: "rare" },
  ];
};
