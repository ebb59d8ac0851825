/**
 * What the contractor is told of the day and the days after. Figures of the trade that no page of the job gives (curing
 * days, flatness) are common practice, no source, and the sheet says so.
 */
import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { dayAfter } from "../print/calendar-day.ts";
import { printTemperature } from "../print/measure.ts";
import { type Note, note } from "./note.ts";
import type { SheetMode } from "./refusal.ts";

const either = (job: Job, inchPound: string, si: string): string => (job.units === "si" ? si : inchPound);

export const toleranceNote = (job: Job): Note =>
  note("Tolerances (common practice)", [
    "Thickness under the bases: never less than shown.",
    `Pads within ${either(job, "1 in", "25 mm")} of their place.`,
    job.lift.asks.slope.known
      ? `Slope under the lift at most ${either(job, `${(job.lift.asks.slope.value * 12).toFixed(2)} in per ft`, `${(job.lift.asks.slope.value * 1000).toFixed(0)} mm per m`)} (the maker's page).`
      : "The lift's bay is level; slopes to a drain begin outside it.",
    `Under each base flat within ${either(job, "1/8 in", "3 mm")} beneath a straightedge.`,
  ]);

export const pourDayNote = (): Note =>
  note(
    "Before and on pour day",
    [
      "Buried lines located before digging (in the US call 811; private lines need a private locator).",
      "Depth measured at four corners and the middle of every pad.",
      "Base compacted, damp, no mud, frost or standing water.",
      "Windows, tubes and joint lines measured from two walls; photographed.",
      "Ticket shows the mix above. No water added.",
      "Pads and slab placed in one go, vibrated at the pads.",
      "Cylinders cast. Saw on site before finishing starts.",
    ],
    "box",
  );

export const curingNote = (job: Job): Note =>
  note("Curing (common practice)", [
    "Kept wet, or curing compound and cover, for 7 days.",
    `Above ${printTemperature(10, job.units)} for the first 3 days, off frost until it has its strength; shade and wind break when hot.`,
    "No vehicle on it for 7 days at normal temperature, longer when cold.",
  ]);

export const datesNote = (job: Job, mode: SheetMode): Note => {
  const { asks } = job.lift;
  const poured = job.pour?.date ?? job.floor.poured;
  const days = asks.days.known ? asks.days.value : undefined;
  const earliest = poured && days !== undefined ? dayAfter(poured, days) : undefined;
  const planned = mode === "pour" ? "Pour planned" : "Poured";
  return note("Dates", [
    poured ? `${planned} ${poured}.` : "Pour date: not set.",
    earliest
      ? `Drilling not before ${earliest} (the maker's ${days} days), and not before the strength is shown. Cold concrete needs longer.`
      : days === undefined
        ? "The maker's days before drilling are not known. Do not drill before they are, nor before the strength is shown."
        : `Drilling not before ${days} days (the maker's) after the pour, and not before the strength is shown. Cold concrete needs longer.`,
  ]);
};

/** Cautions of conduct, each left out when the assessment already says the same (known by its key word). */
const conduct = (mode: SheetMode): readonly (readonly [RegExp, string])[] => [
  [/dust|silica/i, "Drilling and sawing make silica dust: shroud and vacuum or water; no dry sweeping."],
  ...(mode === "pour" ? [[/wet concrete/i, "Wet concrete burns skin and eyes: boots, gloves, goggles."] as const] : []),
  [/unstable/i, "Columns are unstable until anchored and tied: hoist, two people, never beneath."],
  [/anchor missing/i, "Never load a lift with an anchor missing, spinning or too shallow."],
];

export const cautionNote = ({ cautions }: Assessment, mode: SheetMode): Note =>
  note("Cautions", [
    ...new Set(cautions),
    ...conduct(mode).flatMap(([key, words]) => (cautions.some((caution) => key.test(caution)) ? [] : [words])),
  ]);
