import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { anchorFacts, floorFacts, liftFacts, readingFacts, siteFacts, vehicleFacts } from "./known-facts.ts";
import { loadsOf } from "./loads.ts";
import { notVerified, photographsFor, questionFor } from "./question.ts";
import type { PackPart, Referral, ReferralLoads } from "./referral-pack.ts";

/** The engineer's pack, filled as far as anything is known. Always possible: what is not known is said to be not known. */
export const referral = (job: Job, assessment: Assessment): Referral => {
  const { stops, layout, cautions } = assessment;
  const loads = loadsOf(job, assessment);
  return {
    format: 1,
    title: job.title,
    date: job.date,
    sentence: sentenceFor(assessment),
    question: questionFor(job, assessment),
    stops: stops.map(({ reason, next }) => ({ reason, next })),
    reasons: stops.length > 0 ? [] : linesNotMet(assessment),
    site: siteFacts(job),
    floor: floorFacts(job),
    readings: readingFacts(job),
    lift: liftFacts(job),
    anchors: anchorFacts(job),
    vehicles: vehicleFacts(job),
    loads,
    layout,
    photographs: photographsFor(job, assessment),
    notVerified: notVerified(job, assessment),
    told: toldFor(assessment),
    parts: partsOf(job, loads),
    cautions,
  };
};

/** Only what is not met or not shown: what is met, and any margin, is not an engineer's question and would be comfort. */
const linesNotMet = ({ page }: Assessment): readonly string[] =>
  page.lines
    .filter(({ result }) => result === "fails" || result === "not-shown")
    .map(({ title, asked, found, result }) =>
      result === "fails"
        ? `${title}: the maker asks ${asked}, there is ${found}.`
        : `${title}: the maker asks ${asked}, and it is not shown (${found}).`,
    );

const sentenceFor = ({ stops, outcome }: Assessment): string =>
  stops[0]
    ? `For a licensed engineer. ${stops[0].reason}`
    : `For a licensed engineer, at the customer's wish: no stop stands; compared with the maker's page the answer was "${outcome.replaceAll("-", " ")}".`;

const toldFor = ({ stops }: Assessment): readonly string[] => [
  ...(stops.length > 0
    ? [
        `The customer was told: ${stops[0]!.reason}`,
        "Until a licensed engineer has answered in writing nothing is drilled, anchored or lifted here.",
      ]
    : ["The customer was told that nothing in this pack is an approval."]),
  "The customer was told that the seller and the installer do not engineer.",
];

/** Parts of an engineer's package in their usual order. Common practice, no source. */
const partsOf = (job: Job, { cases, from }: ReferralLoads): readonly PackPart[] => {
  const part = (words: string, filled: PackPart["filled"]): PackPart => ({ part: words, filled });
  const survey = job.floor.readings.length > 0 || job.floor.strength.cores.length > 0;
  return [
    part("Cover: project, address, lift", "in part"),
    part("Basis: maker's page, survey, photographs, assumptions", "in part"),
    part("Loads and combinations", cases.length > 0 ? "in part" : "for the engineer"),
    part(
      "Base reactions of every case",
      cases.length === 0 ? "for the engineer" : from === "the maker's reactions" ? "filled" : "in part",
    ),
    part("Base plate", "for the engineer"),
    part("Anchors", "for the engineer"),
    part("Concrete: bearing, punching, bending", "for the engineer"),
    part("Ground", "for the engineer"),
    part("Existing slab: cores, strength, scan, joints", survey ? "in part" : "for the engineer"),
    part("Suspended or post-tensioned floor: analysis of its own", "for the engineer"),
    part("Drawings", "for the engineer"),
    part("Special inspection", "for the engineer"),
    part("Notes for setting", "for the engineer"),
    part("Limits: capacity posted, vehicles excluded", "for the engineer"),
    part("Reports attached: anchors, soil, cores", "for the engineer"),
  ];
};
