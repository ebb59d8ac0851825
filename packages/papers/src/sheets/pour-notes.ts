/**
 * What the contractor is told of the day and the days after. Figures of the trade that no page of the job gives (curing
 * days, flatness) are common practice, no source, and the sheet says so.
 */
import type { Assessment } from "@floorworthy/assess";
import { type CureClock, cureClock } from "@floorworthy/assess/cure";
import { pourDay } from "@floorworthy/assess/pour-day";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
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

export const pourDayNote = (job: Job): Note => {
  const { windows, warnings } = pourDay(job);
  return note(
    "Before and on pour day",
    [
      "Buried lines located before digging (in the US call 811; private lines need a private locator).",
      "Depth measured at four corners and the middle of every pad.",
      "Base compacted, damp, no mud, frost or standing water.",
      "Windows, tubes and joint lines measured from two walls; photographed.",
      "Ticket shows the mix above. No water added.",
      "Pads and slab placed in one go, vibrated at the pads.",
      `Cylinders cast. Saw on site before finishing starts: wet ${windows.sawWet.words} after placing.`,
      ...warnings,
    ],
    "box",
  );
};

export const curingNote = (job: Job): Note => {
  const { curing } = pourDay(job);
  const { days, coversOff, keepAbove } = curing;
  const until = coversOff.date ? `; covers off ${coversOff.date}` : "";
  return note("Curing (common practice)", [
    `Kept wet, or curing compound and cover, for ${days.value} days above ${Math.round(keepAbove.value)} ${keepAbove.unit}${until}.`,
    "Off frost until it has its strength; shade and wind break when hot.",
    "No vehicle on it for 7 days at normal temperature, longer when cold.",
  ]);
};

/** The day in a few words; the cure card has the rest. */
const dayWords = ({ drilling, maker, strength, pour, sentence }: CureClock): string => {
  if (pour === "gone-by") return sentence;
  const { earliest, governs } = drilling;
  const days = maker ? `the maker's ${maker.day} days` : "the maker's days, not known yet";
  if (strength.state === "never")
    return "Drilling only when the strength is shown: too cold to name a day. See the cure card.";
  if (!earliest) return `Drilling not before ${days}, nor before the strength is shown.`;
  const on = earliest.date ?? `day ${earliest.day} after the pour`;
  return governs === "maker"
    ? `Drilling not before ${on} (${days}), and not before the strength is shown. Cold concrete needs longer.`
    : `Drilling not before ${on}: the strength at the temperatures told; ${pour === "planned" ? "kept warm it comes sooner, see" : "see"} the cure card.`;
};

export const datesNote = (job: Job, mode: SheetMode, date: string): Note => {
  const clock = cureClock(job, date);
  const poured = isUnable(clock) ? (job.pour?.date ?? job.floor.poured) : clock.poured;
  const planned = mode === "pour" ? "Pour planned" : "Poured";
  return note("Dates", [
    poured ? `${planned} ${poured}.` : "Pour date: not set.",
    isUnable(clock) ? clock.reason : dayWords(clock),
  ]);
};

export const cautionNote = ({ cautions }: Assessment, mode: SheetMode): Note =>
  note("Cautions", [
    ...new Set(cautions),
    ...(mode === "pour" ? ["Wet concrete burns skin and eyes: boots, gloves, goggles."] : []),
  ]);
