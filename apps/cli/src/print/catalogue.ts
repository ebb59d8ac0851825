import type { Catalogue, LiftFinding } from "@floorworthy/assess/catalogue";
import { printQuantity } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { number, table, wrap } from "./text.ts";

/** Those that may stand first; then each lift in a sentence, with what the next step would take. */
export const catalogueLines = (job: Job, { findings, notes, state }: Catalogue, load: number | undefined): string[] => [
  `${job.title}: which lift for this floor`,
  "",
  ...wrap(summary(findings)),
  "",
  ...table([
    [
      "lift",
      "rated",
      ...(load === undefined ? [] : [`carries ${weight(job, load)}`]),
      "maker's page",
      "margin",
      "outcome",
      "what it would take",
    ],
    ...findings.map((finding) => row(job, finding, load)),
  ]),
  ...alike(findings).flatMap((same) => [
    "",
    same.map(({ name }) => name).join(", "),
    ...wrap(same[0]!.sentence, "- "),
    ...(same[0]!.outcome === "accept" ? [] : same[0]!.conditions.slice(0, MOST).flatMap((line) => wrap(line, "  * "))),
    ...same.flatMap(heavy),
  ]),
  ...(load === undefined
    ? []
    : [
        "",
        ...wrap(
          `Lifting only ${weight(job, load)} does not make a bigger lift ask less of the floor; a lift rated for less may.`,
          "! ",
        ),
      ]),
  "",
  ...notes.flatMap((note) => wrap(note, "! ")),
  ...(state === "cancelled" ? ["! Stopped before every lift was judged."] : []),
];

/** Conditions printed of one lift at most; the job's own check has them all. */
const MOST = 6;

/** Lifts of which the same is said stand together. */
const alike = (findings: readonly LiftFinding[]): readonly (readonly LiftFinding[])[] => {
  const said = [...new Set(findings.map(({ sentence }) => sentence))];
  return said.map((sentence) => findings.filter((finding) => finding.sentence === sentence));
};

const summary = (findings: readonly LiftFinding[]): string => {
  const may = findings.filter(({ standing }) => standing === "may-stand");
  const moved = findings.filter(({ standing }) => standing === "after-move");
  const names = (list: readonly LiftFinding[]): string => list.map(({ name }) => name).join(", ");
  if (may.length === 0 && moved.length === 0) return "None of these lifts may stand on this floor as it is.";
  return [
    ...(may.length > 0 ? [`May stand: ${names(may)}.`] : []),
    ...(moved.length > 0 ? [`May stand once moved: ${names(moved)}.`] : []),
  ].join(" ");
};

const weight = (job: Job, newtons: number): string => printQuantity(newtons, "force", { system: job.units });

const row = (
  job: Job,
  { name, rated, page, margin, outcome, next }: LiftFinding,
  load: number | undefined,
): string[] => [
  name,
  rated.known ? weight(job, rated.value) : "not known",
  ...(load === undefined ? [] : [rated.known ? (rated.value >= load ? "yes" : "NO") : "not known"]),
  page.replace("-", " "),
  margin.replace("-", " "),
  outcome,
  [
    next.words,
    next.volume ? `${number(next.volume.value)} ${next.volume.unit} to order` : "",
    next.cost ? `concrete alone ${next.cost.currency} ${number(next.cost.value)}` : "",
  ]
    .filter(Boolean)
    .join("; "),
];

const heavy = ({ name, tooHeavy }: LiftFinding): string[] =>
  tooHeavy.length === 0 ? [] : wrap(`${name} is too small for ${tooHeavy.join(", ")}.`, "- ");
