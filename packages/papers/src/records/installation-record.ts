import type { Assessment } from "@floorworthy/assess";
import { anchoring } from "@floorworthy/assess/facts";
import type { Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing } from "../drawing/drawing.ts";
import type { SheetOptions } from "../sheets/sheet.ts";
import { mayRecord, tooMuch } from "./may-record.ts";
import { facts, page, type Section, stacked } from "./upright.ts";
import { chosen, torqueOf, weightOf } from "./words.ts";

const name = "installation record";

export const installationRecord = (
  job: Job,
  assessment: Assessment,
  options: SheetOptions,
): readonly Drawing[] | Unable =>
  mayRecord(name, job, assessment) ??
  page(
    job,
    options,
    {
      title: "Installation record",
      lies: "upright",
      cells: [
        { caption: "Installed by: name, date", words: [] },
        { caption: "Received by the owner: name, date", words: [] },
      ],
    },
    (box) => stacked(sections(job, assessment), box, "note-record", 2.2),
  ) ??
  tooMuch(name);

const sections = (job: Job, assessment: Assessment): readonly Section[] => {
  const { lift, installation, floor } = job;
  const loose = anchoring(lift) === "loose";
  return [
    facts("Who and where", [
      ["Owner", job.customer],
      ["Place", job.place],
      ["Day of installation", installation?.date],
      ["Installer", installation?.installer],
      ["Training or licence", installation?.qualification],
    ]),
    facts("The lift", [
      ["Model, as on its data plate", lift.name],
      ["Serial number", installation?.serial],
      ["Rated load", weightOf(lift.rated, job)],
      ["Certification label number", installation?.label],
      ["Edition of the manual used", lift.edition],
    ]),
    facts("The floor it stands on", [
      ...assessment.page.lines
        .filter((line) => ["thickness", "strength", "days"].includes(line.id) && line.result !== "not-asked")
        .map((line): [string, string] => [line.title, `found ${line.found}; maker asks ${line.asked}`]),
      [
        "Tendons, tubes, conduits",
        floor.postTension.known && floor.heat.known && floor.utilities.known
          ? `tendons ${plain(floor.postTension.value)}; heating ${plain(floor.heat.value)}; lines ${plain(floor.utilities.value)}`
          : undefined,
      ],
      ["Departures from the manual, who agreed", undefined],
    ]),
    facts(loose ? "Columns and feet" : "Anchors and columns", [...(loose ? onFeet : onAnchors(job))]),
    facts("Before it was handed over", [
      [
        "Trial run",
        chosen(installation?.trial, {
          empty: "run up and down empty",
          "empty-and-loaded": "run empty, then loaded",
          "not-done": "not done yet",
        }),
      ],
      ["Locks, restraints, labels looked at", undefined],
      ["Owner shown and told", chosen(installation?.instructed, { yes: "yes", no: "not yet" })],
      [
        "Handed over",
        boxes(["manual", ...(loose ? [] : ["anchor's sheet", "anchor log"]), "owner's card", "photographs"]),
      ],
      ...(loose ? [] : [["First look at the nuts due on", undefined] as const]),
    ]),
  ];
};

type Fact = readonly [words: string, found: string | undefined];

const onAnchors = (job: Job): readonly Fact[] => [
  ["Anchor product and lot", job.installation?.lot],
  [
    "Torque, wrench and its check",
    [torqueOf(job.lift.anchors.torque, job), job.installation?.wrench].filter(Boolean).join("; ") || undefined,
  ],
  ["Overhead beam", chosen(job.installation?.beam, { fitted: "fitted and bolted", "not-fitted": "not fitted" })],
  ["Plumb, both columns both ways", chosen(job.installation?.plumb, { plumb: "plumb", "not-plumb": "not plumb" })],
  ["Shims and grout", undefined],
];

const onFeet: readonly Fact[] = [
  ["Places of the feet marked on the floor", undefined],
  ["Columns linked and levelled as the manual shows", undefined],
];

const boxes = (papers: readonly string[]): string => papers.map((paper) => `[  ] ${paper}`).join("   ");

const plain = (word: string): string => word.replaceAll("-", " ");
