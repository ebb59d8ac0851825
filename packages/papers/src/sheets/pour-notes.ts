/**
 * What the contractor is told in words. Figures of the trade that no page of the job gives (waste, water-cement ratio,
 * base course, curing days, bar sizes) are common practice, no source, and the sheet says so where they are not given.
 */
import type { Assessment } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job, Joint } from "@floorworthy/job";
import { jointDistance, windowMargin, windowOf } from "../plan/keep-clear.ts";
import { sizeOf } from "../plan/zones.ts";
import { dayAfter } from "../print/calendar-day.ts";
import { printFeet, printLength, printStress, printTemperature, printVolume } from "../print/measure.ts";
import { printTerm } from "../print/term.ts";
import { concreteQuantities } from "./concrete-quantities.ts";
import { type Note, note } from "./note.ts";
import type { SheetMode } from "./refusal.ts";

const either = (job: Job, inchPound: string, si: string): string => (job.units === "si" ? si : inchPound);

const tape = (mm: number, job: Job): string => `${printFeet(mm, job.units)}${job.units === "si" ? " mm" : ""}`;

/** Orders are rounded up to what a plant sells. */
const ordered = (mm3: number, job: Job): string => {
  const step = job.units === "si" ? 0.25e9 : 764554857.984 / 4;
  return printVolume(Math.ceil(mm3 / step - 1e-9) * step, job.units);
};

const area = (mm2: number, job: Job): string =>
  either(job, `${Math.round(mm2 / 92903.04)} sq ft`, `${(mm2 / 1e6).toFixed(1)} m²`);

export const quantityNote = (job: Job, assessment: Assessment): Note => {
  const { parts, net, waste, wasteBasis, gross } = concreteQuantities(job, assessment);
  const percent = `${Math.round(waste * 100)} %`;
  return note("Concrete to pour", [
    ...parts.map(({ name, outline, area: mm2, thickness, sideSlope, volume }) => {
      const size = outline ? sizeOf(outline, job.units) : area(mm2, job);
      const deep = thickness === undefined ? "thickness not stated" : printLength(thickness, job.units);
      const sides = sideSlope > 0 ? `, sides sloped ${sideSlope} to 1` : "";
      return `${name}: ${size} × ${deep}${sides}${volume === undefined ? "" : ` = ${printVolume(volume, job.units)}`}`;
    }),
    net === undefined || gross === undefined
      ? "The total cannot be given: a thickness is missing."
      : `Net ${printVolume(net, job.units)}; with ${percent} waste (${wasteBasis}) ${printVolume(gross, job.units)}. Order ${ordered(gross, job)}.`,
    ...assessment.remedies.flatMap(({ title, volume }) => (volume ? [`${title}: ${printTerm(volume)}`] : [])),
  ]);
};

export const mixNote = (job: Job): Note => {
  const { pour, lift } = job;
  const asked = [pour?.strength, lift.asks.strength].flatMap((q) => (q?.known ? [q.value] : []));
  const strength = asked.length ? Math.max(...asked) : undefined;
  return note("Mix", [
    strength === undefined
      ? "Strength: not stated. Do not order before it is."
      : `Cylinder strength at 28 days at least ${printStress(strength, job.units)}.`,
    pour?.slump.known
      ? `Slump ${printLength(pour.slump.value, job.units)} when placed; no water added on site.`
      : "No water added on site; ask the plant for a water reducer.",
    "Water to cement at most 0.50; 0.45 where it will freeze (common practice).",
    pour?.air.known
      ? pour.air.value > 0
        ? `Air ${Math.round(pour.air.value * 1000) / 10} %.`
        : "No entrained air."
      : undefined,
    pour?.cement.known ? `Cement type ${pour.cement.value}.` : undefined,
    pour?.fibre.known
      ? `Fibre ${either(job, `${(((pour.fibre.value * 1e9) / 9.80665) * 1.685555).toFixed(1)} lb per cu yd`, `${((pour.fibre.value * 1e9) / 9.80665).toFixed(1)} kg/m³`)}.`
      : undefined,
    "Cast 3 cylinders for the laboratory and 1 to lie beside the slab. Keep the ticket.",
  ]);
};

/** One line for each kind of bar, with all its depths. */
const barLines = ({ floor, units }: Job): readonly string[] => {
  const depths = new Map<string, string[]>();
  for (const { size, spacing, depth, direction } of floor.bars) {
    const way = direction === "both" ? "each way" : `along the ${direction === "x" ? "width" : "depth"}`;
    const kind = `${size}${spacing.known ? ` at ${printLength(spacing.value, units)}` : ""} ${way}`;
    depths.set(kind, [...(depths.get(kind) ?? []), ...(depth.known ? [printLength(depth.value, units)] : [])]);
  }
  return [...depths].map(([kind, down]) => `${kind}${down.length ? `, ${down.join(" and ")} below the top` : ""}.`);
};

/** Where the clear windows lie, from the two walls. */
const windowLine = (windows: readonly Rect[], job: Job): string | undefined => {
  if (!windows.length) return undefined;
  const spans = (axis: "x" | "y") =>
    [
      ...new Set(
        windows.map((w) =>
          (axis === "x" ? [w.x0, w.x1] : [w.y0, w.y1]).map((s) => printFeet(s, job.units)).join(" to "),
        ),
      ),
    ].join(" and ");
  return `Windows lie ${spans("x")} from the left wall, ${spans("y")} from the back wall${job.units === "si" ? " (mm)" : ""}.`;
};

export const steelNote = (job: Job, { layout }: Assessment): Note => {
  const { bars, reinforcement } = job.floor;
  const asks = job.lift.asks.reinforcement;
  return note("Steel and clear windows", [
    ...barLines(job),
    !bars.length && reinforcement.known && reinforcement.value !== "none"
      ? `Reinforcement: ${reinforcement.value}.`
      : undefined,
    !bars.length && !(reinforcement.known && reinforcement.value !== "none")
      ? asks.known && asks.value !== "none"
        ? `The maker asks for ${asks.value}: sizes to be stated.`
        : "No steel is stated."
      : undefined,
    `No bar, wire, chair or tie inside the dashed windows (${printLength(windowMargin(job.units), job.units)} beyond each base plate), full depth. The anchors are drilled there.`,
    windowLine(
      layout.bases.map((base) => windowOf(base, job.units)),
      job,
    ),
    "Photograph the windows before the concrete comes.",
  ]);
};

/** Where a joint is to be made, from the walls when it is parallel to one. */
const jointLine = ({ name, kind, from, to }: Joint, job: Job): string => {
  const where =
    Math.abs(from.x - to.x) < 1
      ? `, ${tape(from.x, job)} from the left wall`
      : Math.abs(from.y - to.y) < 1
        ? `, ${tape(from.y, job)} from the back wall`
        : "";
  const words = kind.replace("-", " ");
  const called = name === "" ? words : name.toLowerCase().includes(words) ? name : `${name}, ${words}`;
  return `${called}${where}, ${tape(Math.hypot(to.x - from.x, to.y - from.y), job)} long.`;
};

export const keepOutNote = (job: Job): Note => {
  const { distance, by } = jointDistance(job.lift, job.units);
  const { joints, pipes, heat } = job.floor;
  const wanted = joints.filter((joint) => joint.state === "proposed");
  return note("Joints and keep-outs", [
    `No saw cut, cold or construction joint inside the dotted lines: ${printLength(distance, job.units)} from any anchor (${by}). None across a pad.`,
    ...wanted.map((joint) => jointLine(joint, job)),
    wanted.some((joint) => joint.kind === "saw-cut")
      ? "Saw a quarter of the slab's thickness deep as soon as the edge does not ravel, the same day."
      : undefined,
    ...pipes.map(
      ({ name, kind, clear }) =>
        `${name || kind}: keep it out of the dotted lines${clear.known ? `, ${printLength(clear.value, job.units)} clear each side` : ""}.`,
    ),
    heat.known && heat.value === "located"
      ? "Heating tubes stay out of the dotted lines and the pads."
      : "No tube, conduit or drain inside the dotted lines or in a pad.",
  ]);
};

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
