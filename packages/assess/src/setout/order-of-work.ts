import type { Job } from "@floorworthy/job";
import type { Drilling } from "./ground.ts";
import type { HoleDetail } from "./hole-detail.ts";
import { lengthWords } from "./length-words.ts";
import { practice } from "./practice.ts";

const laying = (job: Job): string[] => [
  "Strike both wall lines and the column line with chalk; mark the column centres, then every hole from the template.",
  `Compare both pairs of diagonals; within ${lengthWords(practice.diagonals, job.units)} of each other.`,
  "Look again round every mark: joint, crack, patch, stamp, drain. Run the cover meter over every hole.",
];

const kinds: Readonly<Record<string, string>> = {
  adhesive:
    "Clean exactly as the adhesive's sheet says (blow, brush, blow), fill from the bottom, set with a turn, leave it alone until cured.",
};

/** The work in its order; while nothing may be drilled it ends at the marks. Common practice, no source, but for silica: 29 CFR 1926.1153. */
export const orderOfWork = (job: Job, drilling: Drilling, hole: HoleDetail, torque: string | undefined): string[] => {
  if (drilling === "marks-only")
    return [
      ...laying(job),
      "Stop here. Nothing is drilled and no column is stood up until what is missing is settled.",
    ];
  const { kind, holeDepth } = job.lift.anchors.product;
  const depth = holeDepth.known ? lengthWords(holeDepth.value, job.units) : "the sheet's depth";
  const set =
    kinds[kind.known ? kind.value : ""] ??
    "Brush and vacuum, twice; drive the anchor to its embedment through plate and shims.";
  return [
    ...laying(job),
    `New carbide bit of the anchor's size, mark at ${depth}; drill upright, shroud and HEPA vacuum on. One hole of the left column first.`,
    "Measure the hole. Steel, a void, a tube or an early stop: stop, and ask before anything else.",
    `${set}`,
    "Stand the column by hoist, two people, nobody under it; plumb both ways, shim beside every anchor, snug that nut.",
    "The remaining holes through the plate, crosswise; then the other column; then the overhead beam where there is one.",
    "Check spacing, diagonals and plumb again, with the nuts snug and the beam bolted.",
    `Torque by hand wrench, never an impact wrench, crosswise in three rounds${torque ? `: ${torque}` : ""}. A nut that spins or never reaches it: stop.`,
    `Write the log while you work${hole.projection ? "" : "; measure every stud's projection"}. Run empty, then a load a foot high, shake, look at every base.`,
  ];
};
