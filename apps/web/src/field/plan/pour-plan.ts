import type { Job } from "@floorworthy/job";
import type { JobPlan, Question, Step } from "../question.ts";
import { cardUnits, lengthHand } from "./words.ts";

/** Trucks a card has room for; a pad rarely takes more than one. */
const TRUCKS = 3;

/** What is noted on the day of the pour and in the days after. */
export const pourPlan = (job: Job, date: string): JobPlan => {
  const tickets = job.pour?.tickets?.length ?? 0;
  const trucks = Array.from({ length: TRUCKS }, (_, i) => truckStep(job, tickets + i + 1));
  return {
    title: job.title,
    units: job.units,
    date,
    sentence: "Write down what comes off the truck, and what the concrete is kept under.",
    open: "all",
    stop: [],
    before: [
      "Before the truck: photograph the steel, the tubes and the tape in the forms, at every corner of every base.",
      "Wet concrete burns skin and eyes: boots, gloves, glasses, and water at hand.",
      "Water added on the place makes it weaker: write down every bucket.",
    ],
    steps: [dayStep(job, date), ...trucks, thermometerStep(job, date), coverOn(job, date), coverOff(job, date)],
    says: {},
  };
};

const temperature = (job: Job) =>
  ({ kind: "quantity", dimension: "temperature", unit: cardUnits(job.units).temperature, usual: [-30, 45] }) as const;

const step = (id: string, name: string, where: string, questions: readonly Question[], fixed: Step["fixed"]): Step => ({
  id,
  name,
  where: [where],
  figures: [],
  questions,
  fixed,
  note: `pour, ${name.toLowerCase()}`,
});

const dayStep = (job: Job, date: string): Step =>
  step(
    "pour-day",
    "The day",
    "when it is poured, and in what weather",
    [
      {
        key: "pour.date",
        ask: "Day of the pour",
        kind: "choice",
        last: job.pour?.date,
        choices: [{ value: date, words: `today, ${date}` }],
      },
      { key: "pour.weather.air", ask: "Air in the shade", ...temperature(job) },
    ],
    { list: "" },
  );

const truckStep = (job: Job, number: number): Step => {
  const { slump } = job.pour ?? {};
  return {
    ...step(
      `truck-${number}`,
      `Truck ${number}`,
      "its ticket, and what is measured at it",
      [
        { key: "ticket", ask: "Number of the ticket", kind: "words" },
        { key: "time", ask: "When it came", kind: "words", type: "time" },
        {
          key: "slump",
          ask: "Slump",
          kind: "quantity",
          dimension: "length",
          unit: cardUnits(job.units).length,
          usual: [0, 280],
          ...lengthHand(job.units),
        },
        { key: "temperature", ask: "Temperature of the concrete", ...temperature(job) },
        {
          key: "water",
          ask: "Water added here",
          hint: "how much; every bucket counts",
          kind: "words",
          picks: [{ value: "none", words: "none" }],
        },
        { key: "cylinders", ask: "Cylinders cast, how marked", kind: "words" },
        { key: "note", ask: "Anything seen", kind: "words" },
      ],
      { list: "pour.tickets", by: "load", entry: { load: `truck ${number}` } },
    ),
    figures: slump?.known ? [{ words: "slump ordered", figure: slump.written }] : [],
  };
};

const thermometerStep = (job: Job, date: string): Step =>
  step(
    "thermometer",
    "Thermometer",
    `lowest and highest of ${date}, at the concrete; both are needed`,
    [
      { key: "low", ask: "Lowest", ...temperature(job) },
      { key: "high", ask: "Highest", ...temperature(job) },
    ],
    { list: "pour.days", by: "on", entry: { on: date } },
  );

/** Days from the pour to today, for covers are counted so. */
const daysSince = (job: Job, date: string): string =>
  job.pour?.date ? String(Math.max(0, Math.round((Date.parse(date) - Date.parse(job.pour.date)) / 86_400_000))) : "0";

const what: Question = {
  key: "what",
  ask: "What",
  kind: "choice",
  choices: [
    { value: "blanket", words: "blankets" },
    { value: "heater", words: "tent and heater" },
  ],
};

const day = (key: string, ask: string, today: string): Question => ({
  key,
  ask,
  kind: "quantity",
  dimension: "time",
  unit: "d",
  usual: [0, 60],
  picks: [{ value: today, words: `today, day ${today}` }],
});

const coverOn = (job: Job, date: string): Step =>
  step(
    "cover-on",
    "Cover on",
    "days are counted from the pour, which is day 0",
    [
      what,
      day("fromDay", "Put on, day", daysSince(job, date)),
      { key: "holds", ask: "Keeps it above", ...temperature(job) },
    ],
    { list: "pour.covers", by: "what", entry: {} },
  );

const coverOff = (job: Job, date: string): Step =>
  step(
    "cover-off",
    "Cover off",
    "of the cover that lies there; days are counted from the pour",
    [what, day("toDay", "Taken off, day", daysSince(job, date))],
    { list: "pour.covers", by: "what", entry: {} },
  );
