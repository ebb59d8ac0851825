import type { Assessment } from "@floorworthy/assess";
import { anchoring } from "@floorworthy/assess/facts";
import type { Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { dayAfter } from "../print/calendar-day.ts";
import { evenNotes } from "../sheets/even-notes.ts";
import { rule, words } from "../sheets/frame.ts";
import { type Note, note } from "../sheets/note.ts";

import type { SheetOptions } from "../sheets/sheet.ts";
import { mayLift, tooMuch } from "./may-record.ts";
import { facts, page, stacked } from "./upright.ts";
import { torqueOf, weightOf } from "./words.ts";

const name = "owner's card";

export const ownerCard = (job: Job, assessment: Assessment, options: SheetOptions): readonly Drawing[] | Unable =>
  mayLift(name, assessment) ??
  page(
    job,
    options,
    {
      title: "Owner's card: keep it at the lift",
      sentence: "What the lift may lift is on its data plate. The manual comes first; this card helps to keep watch.",
      lies: "upright",
      cells: [
        { caption: "Installed on", words: job.installation?.date ? [job.installation.date] : [] },
        { caption: "Serial number", words: job.installation?.serial ? [job.installation.serial] : [] },
      ],
    },
    (box) => {
      const top = box.y0 + 15;
      const call = stacked(
        [
          facts(
            "Who to call",
            [
              ["Installer", job.installation?.installer],
              ["Inspector", undefined],
              ["Maker's service", undefined],
            ],
            9,
          ),
        ],
        { ...box, y0: box.y1 - 45 },
        "note-call",
        2.6,
      );
      const middle = (box.x0 + box.x1) / 2;
      const notes = evenNotes(
        cardNotes(job),
        [
          { x0: box.x0, x1: middle - 2.5, y0: top + 2, y1: box.y1 - 46 },
          { x0: middle + 2.5, x1: box.x1, y0: top + 2, y1: box.y1 - 46 },
        ],
        3.6,
      );
      if (!call || !notes) return undefined;
      const rated = weightOf(job.lift.rated, job);
      const head: Item[] = [
        words("note-rated", box.x0, top - 3.5, rated ? `Rated load ${rated}` : "Rated load: on the data plate", 8, {
          lettering: "bold",
        }),
        rule(box.x0, top, box.x1, top, "frame"),
      ];
      return [...head, ...notes.items, ...call];
    },
  ) ??
  tooMuch(name);

const cardNotes = (job: Job): readonly Note[] => (anchoring(job.lift) === "anchored" ? anchored(job) : loose(job));

const vehicles = (job: Job, more: readonly string[]): Note =>
  note("Vehicles", [
    ...job.vehicles.map(({ name: vehicle, weight }) => `${vehicle}: ${weightOf(weight, job) ?? "weigh it first"}.`),
    ...more,
  ]);

/** A lift on feet: its place is judged, and taken again each time. Common practice, no source. */
const loose = (job: Job): readonly Note[] => [
  vehicles(job, [
    "Any other vehicle: weight of each axle from its papers or a weighbridge, tools and cargo counted; each column by its own plate.",
  ]),
  note(
    "Every time, before the lift",
    [
      "Every foot on its marked place, flat, on clean dry concrete; clear of joints, cracks, edges and drains.",
      "No new crack, crumb or hollow sound where a foot stands.",
      "Columns linked and level as the manual shows; locks, forks and cables whole.",
      "A foot up, stop, shake, look at every foot. Then up, and down on the locks.",
    ],
    "box",
  ),
  note("Photographs", [
    "The floor where the feet stand, with a tape, on the first day and every year.",
    "Every crack: width, length and date written beside it.",
  ]),
  note("Stop, lower, unload, tag it, and call when", [
    "a crack opens at a foot, a step or a hollow sound appears; a foot sinks, rocks or slides; a column leans;",
    "the lift was struck, flooded, or lifted more than its load.",
  ]),
  note("Never", [
    "Never a plank, plate or block under a foot that is not the maker's; never a foot over a joint, a cover or a drain.",
    "Never an adapter or a repair that is not the maker's.",
  ]),
];

const anchored = (job: Job): readonly Note[] => [
  vehicles(job, [
    "Any other vehicle: weight from its door label or a weighbridge, tools and cargo counted. A heavier one than these: look at the nuts first.",
    "Balance it fore and aft over the column line; use the car maker's lifting points.",
  ]),
  note(
    "Every day, before the first lift",
    [
      "Nuts and washers all there, none loose to the hand; no stud stands higher than before.",
      "No new crack, crumb or hollow sound round a base; no water or salt standing there.",
      "Arms lock, pads whole, cables and hoses whole, both carriages level.",
      "A foot up, stop, shake, look at every base. Then up, and down on the locks.",
    ],
    "box",
  ),
  note("Torque, by a checked hand wrench", [
    `${torqueOf(job.lift.anchors.torque, job) ?? "As the manual says"}. The maker's dates first; where the manual has none, the usual ones are:`,
    ...datesOf(job),
    "Write down how far every nut turned. A small turn the first time is the anchor settling. A nut that turns at every visit is an anchor coming out: stop.",
  ]),
  note("Photographs", [
    "The floor round each base from the same two places, with a tape, on the day of installing and at every visit.",
    "Every crack: width, length and date written beside it.",
  ]),
  note("Stop, lower, unload, tag it, and call when", [
    "a nut spins, or will not come to its torque; a stud rises; an anchor is missing;",
    "a crack opens from an anchor, a step or a hollow sound appears; a base rocks or a column leans;",
    "the lift was struck, flooded, moved, or lifted more than its load.",
  ]),
  note("Never", [
    "Never an impact wrench on the nuts; never a new anchor in an old hole.",
    "Never a longer arm, an adapter or a repair that is not the maker's.",
  ]),
];

const datesOf = (job: Job): string[] => {
  const day = job.installation?.date;
  const after = (days: number): string => (day && dayAfter(day, days)) ?? "______________";
  return [
    `after a week to a month: by ${after(30)}`,
    `then every quarter of the first year: ${after(90)}`,
    `then yearly, with the inspection: ${after(365)}`,
  ];
};
