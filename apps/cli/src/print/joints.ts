import type { JobJointPlan } from "@floorworthy/assess/joint-plan";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { number, section, table, wrap } from "./text.ts";
import { unfold } from "./unfold.ts";

const figure = (term: Term | undefined): string => (term ? `${number(term.value)} ${term.unit}`.trim() : "");

const answer = (plan: JobJointPlan): string => {
  if (plan.basis === "as-it-is") {
    const cut = plan.cutOuts.length > 0 ? ` ${figure(plan.sawLength)} to saw.` : "";
    return `The floor stands: its ${plan.lines.length} joint${plan.lines.length === 1 ? " is" : "s are"} taken as given.${cut}`;
  }
  if (plan.lines.length === 0) return "No joint is needed: the slab is within the spacing as it is.";
  const broken = plan.unmet.length;
  return `${plan.lines.length} lines, ${figure(plan.sawLength)} of saw cut, ${figure(plan.depth)} deep. ${broken === 0 ? "Every rule is kept." : `${broken} ${broken === 1 ? "panel breaks" : "panels break"} a rule; see below.`}`;
};

/** The layout in words: each line from two walls, its reason; what was refused; which rule could not be kept. */
export const jointLines = (job: Job, plan: JobJointPlan, fold: "folded" | "unfolded"): string[] => [
  job.title,
  "",
  "JOINTS",
  ...wrap(answer(plan)),
  ...(plan.spacing
    ? ["", `Largest distance between joints ${figure(plan.spacing)}, panels at most 1.5 times as long as wide.`]
    : []),
  ...plan.lines.flatMap((line) => [
    "",
    `${line.name}   ${line.where}`,
    `    ${line.state === "there" ? `${line.kind.replace("-", " ")}, there; ` : ""}${figure(line.length)} long${line.toAnchor ? `; ${figure(line.toAnchor)} ${line.toAnchor.words}` : ""}`,
    ...line.reasons.flatMap((reason) => wrap(reason, "    ")),
  ]),
  ...section(
    "Cut out of the old slab, full depth",
    plan.cutOuts.map(({ what, length }) => `round ${what}: ${figure(length)}`),
  ),
  ...section(
    "Rules that could not be kept",
    plan.unmet.map(({ words }) => words),
  ),
  ...section(
    "Asked for and not cut",
    plan.notMade.map(({ what, where, reason }) => `${what}, ${where}. ${reason}`),
  ),
  ...(plan.isolation.length === 0
    ? []
    : [
        "",
        "Filler, full depth",
        ...table(
          plan.isolation.map(({ what, length, shape }) => [
            shape === "round" ? `round ${what}` : `along ${what}`,
            figure(length),
          ]),
        ),
      ]),
  ...section("Look out", plan.warnings),
  ...(fold === "unfolded"
    ? ["", "WORKINGS", ...[plan.spacing, plan.depth, plan.sawLength].flatMap((term) => (term ? unfold(term, 1) : []))]
    : []),
  "",
  ...wrap(
    "The hour of the saw follows the weather: it stands on the cure and saw card. Cracks cannot be prevented, only placed.",
    "! ",
  ),
];
