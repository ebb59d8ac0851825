/** What the contractor is told of concrete, mix, steel and joints: the order and the joint plan in words. */
import type { Assessment } from "@floorworthy/assess";
import type { JobJointPlan } from "@floorworthy/assess/joint-plan";
import { type BarMat, type Order, windowDepth, windowMargin } from "@floorworthy/assess/order";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, printNumber, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { jointDistance, windowOf } from "../plan/keep-clear.ts";
import { sizeOf } from "../plan/zones.ts";
import { printFeet, printLength, printVolume } from "../print/measure.ts";
import { type Note, note } from "./note.ts";

const unitWords: Readonly<Record<string, string>> = { "yd³": "cu yd", "ft²": "sq ft" };

/** A bought amount on one line: "178 bars of 20 ft", "26.50 cu yd". */
export const amountWords = ({ value, unit }: Term, sold: string): string => {
  const digits = (unit === "ft" || unit === "m") && value < 100 ? 1 : 0;
  const figure = unit === "yd³" || unit === "m³" ? value.toFixed(2) : printNumber(value, digits);
  return sold ? `${figure} ${sold}` : `${figure} ${unitWords[unit] ?? unit}`.trim();
};

export const quantityNote = (job: Job, order: Order | Unable, assessment: Assessment): Note => {
  if (isUnable(order)) return note("Concrete to pour", [`The total cannot be given. ${order.reason}`]);
  const { units } = job;
  const percent = order.withWaste.from?.find(({ symbol }) => symbol === "w");
  return note("Concrete to pour", [
    ...order.parts.map(({ name, outline, area, thickness, sideSlope, volume }) => {
      const size = outline
        ? sizeOf(outline, units)
        : units === "si"
          ? `${(area / 1e6).toFixed(1)} m²`
          : `${Math.round(area / 92903.04)} sq ft`;
      const sides = sideSlope > 0 ? `, sides sloped ${sideSlope} to 1` : "";
      return `${name}: ${size} × ${printLength(thickness ?? Number.NaN, units)}${sides} = ${printVolume(volume ?? Number.NaN, units)}`;
    }),
    `Net ${amountWords(order.net, "")}; with ${printNumber(percent?.value ?? 0, 1)} % waste (${job.pour?.waste.known ? "stated" : "common practice"}) ${amountWords(order.withWaste, "")}. Order ${amountWords(order.ordered, "")}, ${order.loads.value === 1 ? "one load" : `${order.loads.value} loads`}.`,
    order.pours === "job" ? undefined : `Sized as: ${assessment.remedies.find(({ id }) => id === order.pours)?.title}.`,
  ]);
};

/** What else must be on site before the truck comes. */
export const materialsNote = (order: Order | Unable): Note =>
  note(
    "To have on site",
    isUnable(order)
      ? []
      : order.lines
          .filter(({ id, group }) => group !== "concrete" && id !== "cart-away" && id !== "break-out")
          .map(({ what, buy, sold }) => `${what}: ${amountWords(buy, sold)}`),
  );

export const mixNote = (job: Job, order: Order | Unable): Note => {
  if (isUnable(order)) return note("Mix", []);
  const practice = order.mix.filter(({ basis }) => basis.startsWith("common practice"));
  const short: Readonly<Record<string, string>> = {
    strength: "Cylinder strength, 28 days",
    stone: "Stone to",
    cylinders: "Cylinders",
    fibre: "Fibres",
  };
  return note("Mix", [
    ...order.mix
      .filter(({ id, words }) => id !== "fibre" || words !== "none")
      .map(
        ({ id, what, words, basis }) =>
          `${short[id] ?? what} ${words}${basis.startsWith("common practice") && practice.length < order.mix.length ? " *" : ""}.`,
      ),
    "No water added on site; keep the ticket. * common practice",
    job.lift.asks.strength.known ? undefined : "The strength the maker asks is not known: do not order before it is.",
  ]);
};

/** One line for each kind of bar, with all its depths. */
const matLines = (mats: readonly BarMat[], { units }: Job): readonly string[] => {
  const kinds = new Map<string, Set<string>>();
  for (const { where, bar, spacing, depth } of mats) {
    const kind = `${bar.size} at ${printLength(spacing, units)}, ${where}`;
    const depths = kinds.get(kind) ?? new Set<string>();
    if (depth !== undefined) depths.add(printLength(depth, units));
    kinds.set(kind, depths);
  }
  return [...kinds].map(([kind, down]) => `${kind}${down.size ? `: ${[...down].join(" and ")} below the top` : ""}.`);
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

export const steelNote = (job: Job, order: Order | Unable, { layout }: Assessment): Note => {
  const { reinforcement } = job.floor;
  const mats = isUnable(order) ? [] : order.mats;
  const mesh = isUnable(order) ? undefined : order.lines.find(({ id }) => id === "mesh");
  const depth = windowDepth(job);
  const margin = printLength(windowMargin(job.units), job.units);
  const usual = !isUnable(order) && order.warnings.some((words) => words.startsWith("No bars are stated"));
  return note("Steel and clear windows", [
    ...matLines(mats, job),
    usual ? "These bars are the trade's habit: none are stated in the job." : undefined,
    mesh ? `${mesh.what} in the slab, upper half, cut out at the windows.` : undefined,
    mats.length === 0 && !mesh
      ? reinforcement.known && reinforcement.value !== "none"
        ? `Reinforcement: ${reinforcement.value}.`
        : "No steel is stated."
      : undefined,
    `No bar, wire, chair or tie inside the dashed windows (${margin} beyond each base plate), ${depth === undefined ? "full depth" : `down to ${printLength(depth, job.units)}`}: the anchors are drilled there. Bars that would cross lie beside them.`,
    windowLine(
      layout.bases.map((base) => windowOf(base, job.units)),
      job,
    ),
    "Photograph the windows before the concrete comes.",
  ]);
};

const plannedLines = (plan: JobJointPlan, job: Job): readonly string[] => {
  const cut = plan.lines.filter(({ state }) => state === "to-make");
  if (cut.length === 0) return [];
  const names = cut.length > 1 ? `${cut[0]!.name} to ${cut.at(-1)!.name}` : cut[0]!.name;
  return [
    `Saw lines ${names} as drawn, ${amountWords(plan.sawLength, "")} in all${plan.depth ? `, ${printLength(plan.depth.value * (plan.depth.unit === "in" ? 25.4 : 1), job.units)} deep` : ""}, as soon as the edge does not ravel. Places and reasons: joint sheet.`,
    ...plan.unmet.slice(0, 1).map(({ words }) => words),
    plan.isolation.length > 0 ? "Filler, full depth, along the walls and round the columns of the building." : "",
  ];
};

export const jointNote = (job: Job, plan: JobJointPlan | Unable): Note => {
  const { distance, by } = jointDistance(job.lift, job.units);
  const { pipes, heat } = job.floor;
  return note("Joints and keep-outs", [
    `No saw cut, cold or construction joint inside the dotted lines: ${printLength(distance, job.units)} from any anchor (${by}). None across a pad.`,
    ...(isUnable(plan) ? [plan.reason] : plannedLines(plan, job)),
    ...pipes.map(
      ({ name, kind, clear }) =>
        `${name || kind}: keep it out of the dotted lines${clear.known ? `, ${printLength(clear.value, job.units)} clear each side` : ""}.`,
    ),
    heat.known && heat.value === "located"
      ? "Heating tubes stay out of the dotted lines and the pads."
      : "No tube, conduit or drain inside the dotted lines or in a pad.",
  ]);
};
