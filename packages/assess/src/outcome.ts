import type { Job } from "@floorworthy/job";
import type { MarginAnswer, Outcome, PageAnswer, PageLine, Stop } from "./assessment.ts";
import { waiting } from "./cure/wait.ts";
import { anchoring } from "./facts/anchoring.ts";
import { addDays } from "./facts/calendar.ts";
import { floorConditions } from "./facts/conditions.ts";
import type { Facts } from "./facts/facts.ts";

/** What to do and why, most important first. */
export interface Ruling {
  readonly outcome: Outcome;
  readonly sentence: string;
  readonly reasons: readonly string[];
  readonly conditions: readonly string[];
}

/** The first hit wins: stops, the page in the order of its gates, facts not shown, then the page is met. */
export const rule = (job: Job, facts: Facts, stops: readonly Stop[], page: PageAnswer, margin: MarginAnswer): Ruling =>
  stopped(stops) ??
  (job.floor.state === "to-be-poured" ? toPour(job, page, margin) : standing(job, facts, page, margin));

const stopped = (stops: readonly Stop[]): Ruling | undefined => {
  const first = stops[0];
  if (!first) return undefined;
  const sentences = {
    refuse: "Do not install on this floor.",
    refer: "This is for a licensed engineer to judge.",
    hold: "Nothing can be decided before a fact is settled.",
    "out-of-service": "Take the lift out of service.",
  };
  return {
    outcome: first.outcome,
    sentence: `${sentences[first.outcome]} ${first.reason}`,
    reasons: stops.map((s) => s.reason),
    conditions: stops.map((s) => s.next),
  };
};

const reasonOf = (line: PageLine): string =>
  line.result === "fails"
    ? `${line.title}: the maker asks ${line.asked}, there is ${line.found}.`
    : `${line.title}: the maker asks ${line.asked}, and it is not shown (${line.found}).`;

const linesWith = (page: PageAnswer, result: PageLine["result"]): PageLine[] =>
  page.lines.filter((line) => line.result === result);

const outcomeOfLine: Record<string, Outcome> = {
  thickness: "pour",
  strength: "pour",
  reinforcement: "pour",
  slope: "pour",
  days: "wait",
  edge: "shift",
  joint: "shift",
  crack: "shift",
  wall: "shift",
  ceiling: "lighter-lift",
  "one-slab": "pour",
  footing: "refer",
  "crack-state": "refer",
  "under-plate": "shift",
  pipe: "shift",
};

/** What an engineer has to look at comes before what could be poured or shifted. */
const gravest = (fails: readonly PageLine[]): PageLine | undefined =>
  fails.find((line) => outcomeOfLine[line.id] === "refer") ?? fails[0];

const standing = (job: Job, facts: Facts, page: PageAnswer, margin: MarginAnswer): Ruling => {
  const failing = linesWith(page, "fails");
  const first = gravest(failing);
  const fails = first ? [first, ...failing.filter((line) => line !== first)] : [];
  const open = linesWith(page, "not-shown");
  const reasons = [...fails, ...open].map(reasonOf);
  if (first) {
    const outcome = outcomeOfLine[first.id] ?? "refuse";
    return {
      outcome,
      sentence: failSentence(outcome, job, facts, first),
      reasons,
      conditions: afterFailure(outcome, job, facts),
    };
  }
  if (page.verdict === "not-judged") {
    return {
      outcome: "hold",
      sentence: "Hold: the maker's page has not been read, so there is nothing to compare with.",
      reasons: ["No line of the maker's floor page is known."],
      conditions: ["Read the floor page of this lift's manual and enter its lines."],
    };
  }
  const holds = margin.verdict === "ample" || margin.verdict === "enough";
  if (open.length > 0) {
    const beyondStrength = open.filter((line) => line.id !== "strength" && !soft.has(line.id));
    const mayAccept = beyondStrength.length === 0 && holds;
    const conditions = [
      ...open.map((line) => `Show it: ${line.title.toLowerCase()} ${line.asked}. ${sentence(line.why)}`),
      ...always(job),
    ];
    return mayAccept
      ? {
          outcome: "accept-if",
          sentence: `Accept if ${list(open.map(shortly))} ${open.length === 1 ? "is" : "are"} shown.`,
          reasons: [...reasons, margin.sentence],
          conditions,
        }
      : {
          outcome: "hold",
          sentence: `Hold: ${list((beyondStrength.length > 0 ? beyondStrength : open).map(shortly))} ${(beyondStrength.length > 0 ? beyondStrength : open).length === 1 ? "is" : "are"} not shown${beyondStrength.length > 0 ? "" : " and the margin does not hold without it"}.`,
          reasons: [...reasons, margin.sentence],
          conditions,
        };
  }
  const met = "The floor meets every line of the maker's page.";
  if (margin.verdict === "not-computed") {
    return {
      outcome: "accept-if",
      sentence: `${met} The margin is not computed: accept only when that is heard and recorded.`,
      reasons: [met, margin.sentence],
      conditions: [
        "Settle what keeps the margin from being computed, or have a licensed engineer look.",
        ...always(job),
      ],
    };
  }
  if (margin.verdict === "short") {
    return {
      outcome: "accept-if",
      sentence: `${met} The margin is short all the same: accept only with the advice below heard and recorded.`,
      reasons: [met, margin.sentence],
      conditions: [
        "Have a licensed engineer look, pour thicker concrete under the bases, or choose a lighter or overhead-tied lift.",
        ...always(job),
      ],
    };
  }
  return {
    outcome: "accept",
    sentence: `Accept: the floor meets the maker's page. ${margin.sentence}`,
    reasons: [met, margin.sentence],
    conditions: always(job),
  };
};

/** Lines that a look on the day of installing settles, and that no pour depends on. */
const soft = new Set(["ceiling", "slope", "days"]);

const shortly = (line: PageLine): string =>
  `${line.title.charAt(0).toLowerCase()}${line.title.slice(1)} (${line.asked})`;

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

const failSentence = (outcome: Outcome, job: Job, facts: Facts, first: PageLine): string => {
  const why = `${first.title}: ${first.found}, asked ${first.asked}.`;
  switch (outcome) {
    case "pour":
      return `Not on this floor as it stands; pour new concrete under the columns. ${why}`;
    case "wait":
      return `Wait. ${waiting(job)?.sentence ?? `Drill not before the maker's days have passed${earliest(job, facts) ? `, ${earliest(job, facts)}` : ""}.`} ${why}`;
    case "shift":
      return `Shift the lift: ${first.found}, and the maker asks ${first.asked}.`;
    case "refer":
      return `This is for a licensed engineer to judge. ${why}`;
    default:
      return `Not this lift here. ${why}`;
  }
};

const earliest = (job: Job, { age }: Facts): string | undefined => {
  const asked = job.lift.asks.days;
  return asked.known && age.poured ? addDays(age.poured, asked.high) : undefined;
};

const afterFailure = (outcome: Outcome, job: Job, facts: Facts): string[] => {
  if (outcome === "wait") {
    const told = waiting(job);
    if (told) return [...told.conditions];
    const date = earliest(job, facts);
    return [
      `Nothing is drilled and no column is stood up, not even "just snugged", ${date ? `before ${date}` : "before the maker's days have passed"}.`,
      "Days count only for warm concrete: in the cold a field-cured cylinder has to show the strength as well.",
    ];
  }
  if (outcome === "pour")
    return [
      "Before anything is cut: make sure that there are no tendons, tubes or conduits in the slab.",
      "Fresh concrete then waits for the maker's days and strength.",
    ];
  if (outcome === "shift")
    return [
      "Find a place where every anchor keeps its distance and the vehicle still fits; otherwise pour pads across the joint.",
    ];
  if (outcome === "refer")
    return [
      "Send the engineer the survey, the photographs and the maker's page; nothing is drilled or poured before the answer.",
    ];
  return [];
};

const always = (job: Job): string[] => [
  ...floorConditions(job),
  ...(job.lift.top.known && job.lift.top.value === "overhead-tied"
    ? [
        "The overhead beam is fitted and recorded and both columns are plumb: without it the floor carries about twice the moment.",
      ]
    : []),
  ...(anchoring(job.lift) === "anchored" ? onAnchors(job) : onFeet),
];

const onAnchors = ({ lift }: Job): string[] => [
  ...(lift.anchors.product.sheet.known && lift.anchors.product.sheet.value === "missing"
    ? ["The anchor's own sheet is in hand before a hole is drilled."]
    : []),
  "Every anchor drilled to depth, cleaned, set and torqued to its own sheet, and written in the log.",
  "Torque looked at again after the first month, then as the maker says.",
];

/** A lift that stands loose is set up anew each time. Common practice, no source. */
const onFeet = [
  "Every foot on the place judged here, each time: mark the places on the floor, clear of joints, cracks and edges.",
  "Feet flat on clean concrete, nothing packed under them but what the maker allows.",
];

const toPour = (job: Job, page: PageAnswer, margin: MarginAnswer): Ruling => {
  const fails = linesWith(page, "fails").filter((line) => line.id !== "days");
  const reasons = [...fails.map(reasonOf), margin.sentence];
  const conditions = [
    "Thickness at the columns is never under the figure on the sheet; photographs with a tape before the pour.",
    "Cylinders show the strength, one of them cured beside the slab.",
    "Drilling waits for the maker's days and the strength, whichever is later.",
    ...always(job),
  ];
  return fails.length > 0
    ? {
        outcome: "pour",
        sentence: `Pour, but not as planned: ${fails[0]!.title.toLowerCase()} ${fails[0]!.found}, asked ${fails[0]!.asked}.`,
        reasons,
        conditions,
      }
    : {
        outcome: "pour",
        sentence: `Pour as on the sheet; then the floor will meet the maker's page. ${margin.sentence}`,
        reasons: ["As planned the pour meets the lines of the maker's page that concrete can meet.", margin.sentence],
        conditions,
      };
};

const sentence = (words: string): string => (words === "" || /[.!?]$/.test(words) ? words : `${words}.`);
