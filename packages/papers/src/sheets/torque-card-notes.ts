import { printMovement, type Upkeep } from "@floorworthy/assess/upkeep";
import type { UnitSystem } from "@floorworthy/engine/quantities";
import { type Note, note } from "./note.ts";

/** What to do on a round, in order. Common practice, no source. */
export const roundNotes = ({ anchors }: Upkeep, units: UnitSystem): readonly Note[] => {
  const limit = anchors[0]?.limit;
  return [
    note(
      "Before",
      [
        "Vehicle off, arms down, lift switched off and locked.",
        "Torque wrench checked within the year; never an impact wrench.",
        "Floor swept around every base, so that a new crack is seen.",
      ],
      "box",
    ),
    note("Each nut, in the order above", [
      "Pull slowly. Write the torque at which the nut begins to turn: FOUND.",
      "Go on to the torque it is set to. Write how far it turned on the way: TURNED.",
      "Measure the stud above the plate with the same rule at the same place: STUD.",
      "Tap the concrete around it: a dull, hollow sound gets a cross.",
    ]),
    note(
      "Look, every base",
      [
        "No new crack, no old one longer or wider.",
        "No gap under the plate, no shim loose, no rust water.",
        "Column plumb, head not leaning.",
      ],
      "box",
    ),
    note("Stop, lower, lock out and tag", [
      "A nut that spins, a stud that is broken, a nut or anchor that is not there.",
      `A nut or stud that has come up more than ${limit === undefined ? "the limit" : printMovement(limit, units)} in all.`,
      "A nut that turns at every round as much as at the last or more.",
      "Concrete that sounds hollow, or a crack that grows at an anchor.",
    ]),
  ];
};

/** Why this round, and what its torque will say. */
export const reasonNotes = ({ next, answer, reasons }: Upkeep, units: UnitSystem): readonly Note[] => [
  ...(next
    ? [
        note(
          "Why then",
          next.reasons.slice(0, 3).map(({ date, words }) => `${date}: ${words}.`),
        ),
      ]
    : []),
  ...(answer === "retorque-and-look" ? [note("Look at this first", reasons.slice(0, 3))] : []),
  note("What torque says", [
    `Torque tells how hard the nut was to turn, not how much the concrete holds. ${common[units]} some 18 months before is common: bring it back and look.`,
  ]),
];

const common: Readonly<Record<UnitSystem, string>> = {
  "inch-pound": "40 to 50 lb-ft found where 100 to 120 were set",
  si: "55 to 70 N·m found where 135 to 165 were set",
};
