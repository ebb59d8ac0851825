/** What to get for one pour: the concrete by parts, the mix, steel, ground, edges, prices, each figure unfolded. */
import type { Polygon } from "@floorworthy/engine/geometry";
import { concreteOrder, type OrderTerms, outlineLength } from "@floorworthy/engine/orders";
import { fromBase, isUnable, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import { assumed, defaults, type Job, type Zone } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { type JobJointPlan, planJobJoints } from "../joint-plan/index.ts";
import { remedyZones } from "../remedies.ts";
import { bagsOrTruck } from "./bags-or-truck.ts";
import { totalOf } from "./costs.ts";
import { dowelLines } from "./dowel-lines.ts";
import { edgeLines } from "./edge-lines.ts";
import { cutOutLines, newFloorLines } from "./ground-lines.ts";
import { mixFor, strengthToOrder } from "./mix.ts";
import type { Order, OrderLine } from "./order.ts";
import { type PourPart, pourParts, zonesToPour } from "./pour-parts.ts";
import { soldAs } from "./practice.ts";
import { steelLayers } from "./steel-layers.ts";
import { barLines, chairLine, dragFor, fibreLine, meshLine, slabBarSteel } from "./steel-lines.ts";
import { warningsFor } from "./warnings.ts";

export interface OrderWishes {
  /** the joint plan, when the caller has one already */
  readonly joints?: JobJointPlan;
  /** id of the remedy to price where the job draws no pad; the first one when left out */
  readonly remedy?: string;
}

const PLACE = "order";

/** The job with what is poured drawn into it, or why nothing is to be ordered. */
const poured = (job: Job, assessment: Assessment, remedy?: string): { job: Job; pours: string } | Unable => {
  const stop = assessment.stops[0];
  if (stop) return unable(PLACE, `${stop.reason} ${stop.next}`.trim());
  const { outcome, reasons } = assessment;
  if (outcome === "refuse" || outcome === "refer" || outcome === "out-of-service")
    return unable(PLACE, `Nothing is ordered for this floor. ${reasons.join(" ")}`);
  if (job.floor.state === "to-be-poured" || (zonesToPour(job).length > 0 && !remedy)) return { job, pours: "job" };
  const offered = outcome === "pour" || outcome === "shift" ? remedyZones(job) : [];
  const named = assessment.remedies.map(({ id }) => id);
  const open = offered.filter(({ id }) => named.length === 0 || named.includes(id));
  const chosen = remedy ? open.find(({ id }) => id === remedy) : open[0];
  if (remedy && !chosen)
    return unable(
      PLACE,
      `There is no remedy "${remedy}" for this job${open.length > 0 ? `; there is ${open.map(({ id }) => id).join(", ")}` : ""}.`,
    );
  if (!chosen)
    return unable(
      PLACE,
      outcome === "pour" || outcome === "shift"
        ? "New concrete is needed but none is drawn, and no remedy fits this bay: draw the pad in the job (floor.zones, state: proposed)."
        : "No concrete is to be poured in this job.",
    );
  return {
    job: { ...job, floor: { ...job.floor, zones: [...job.floor.zones, ...chosen.zones] } },
    pours: chosen.id,
  };
};

const wasteOf = ({ pour }: Job): { readonly value: number; readonly basis: string } => {
  if (pour?.waste.known) return { value: pour.waste.value, basis: "stated in the job" };
  const usual = assumed(defaults.waste);
  return { value: usual.value, basis: `${defaults.waste.why}; ${defaults.waste.source}` };
};

const sold = (job: Job, waste: number): OrderTerms => ({
  waste,
  step: soldAs[job.units].step,
  load: soldAs[job.units].load,
  unit: job.units === "si" ? "m³" : "yd³",
});

/** Cut-outs are poured one by one, a new floor with its pads in one go. */
const largestPiece = (job: Job, parts: readonly PourPart[]): number => {
  const volumes = parts.map((part) => part.volume ?? 0);
  return job.floor.state === "standing" ? Math.max(...volumes) : volumes.reduce((sum, v) => sum + v, 0);
};

const longestPanel = (plan: JobJointPlan, outline: Polygon): number =>
  plan.panels.length > 0
    ? Math.max(...plan.panels.map(({ width, length }) => Math.max(width, length)))
    : outlineLength(outline) / 4;

const concreteLine = (job: Job, parts: readonly PourPart[], net: number, bags: Order["bags"]) => {
  const waste = wasteOf(job);
  const order = concreteOrder(net, sold(job, waste.value));
  const netTerm: Term = {
    ...order.net,
    formula: "Σ V",
    from: parts.flatMap(({ term }) => (term ? [term] : [])),
  };
  const gross: Term = {
    ...order.withWaste,
    from: [netTerm, { symbol: "w", words: "waste", value: 100 * waste.value, unit: "%", basis: waste.basis }],
  };
  const ordered: Term = {
    ...order.ordered,
    formula: `rounded up to ${fromBase(soldAs[job.units].step, order.ordered.unit)} ${order.ordered.unit}`,
    from: [gross],
  };
  const line: OrderLine = {
    id: "concrete",
    group: "concrete",
    what: "Ready-mixed concrete",
    takes: gross,
    buy: ordered,
    sold: "",
    note: `${order.loads.value === 1 ? "One load" : `${order.loads.value} loads`}. ${bags.sentence}`,
    cost: bags.truckCost,
  };
  return { netTerm, gross, ordered, loads: order.loads, line };
};

const slabSteel = (job: Job, outline: Polygon, drag: Term): readonly OrderLine[] =>
  job.floor.reinforcement.known && job.floor.reinforcement.value === "mesh" ? meshLine(job, outline, drag) : [];

const assembled = (
  job: Job,
  assessment: Assessment,
  pours: string,
  zones: readonly Zone[],
  parts: readonly PourPart[],
  plan: JobJointPlan | Unable,
): Order => {
  const { outline } = assessment.layout;
  const fresh = job.floor.state === "to-be-poured";
  const net = parts.reduce((sum, part) => sum + (part.volume ?? 0), 0);
  const waste = wasteOf(job).value;
  const { step } = soldAs[job.units];
  const ordered = Math.ceil((net * (1 + waste)) / step - 1e-9) * step;
  const bags = bagsOrTruck(job, net, net * (1 + waste), largestPiece(job, parts) * (1 + waste), ordered);
  const concrete = concreteLine(job, parts, net, bags);
  const steel = steelLayers(job, assessment, zones);
  const slab = parts.find((part) => part.outline === undefined);
  const drag =
    slab?.thickness !== undefined && outline && !isUnable(plan)
      ? dragFor(longestPanel(plan, outline), slab.thickness)
      : undefined;
  const dowels = dowelLines(job, zones, factsOf(job));
  const lines: readonly OrderLine[] = [
    concrete.line,
    ...fibreLine(job, ordered),
    ...barLines(job, steel.mats),
    ...chairLine(job, steel.mats),
    ...(fresh && outline && drag ? slabSteel(job, outline, drag) : []),
    ...(fresh ? (outline ? newFloorLines(job, outline, parts) : []) : cutOutLines(job, parts)),
    ...(isUnable(plan) ? [] : edgeLines(job, plan, fresh ? outline : undefined)),
    ...dowels.lines,
  ];
  return {
    title: job.title,
    pours,
    parts,
    net: concrete.netTerm,
    withWaste: concrete.gross,
    ordered: concrete.ordered,
    loads: concrete.loads,
    bags,
    mix: mixFor(job, steel.mats.length > 0 ? "steel" : "none"),
    mats: steel.mats,
    drag,
    lines,
    total: totalOf(job, lines),
    warnings: warningsFor({
      job,
      outcome: assessment.outcome,
      strength: strengthToOrder(job).value,
      plan,
      steel: [...steel.warnings, ...dowels.warnings],
      drag,
      slabSteel: slabBarSteel(steel.mats),
      ordered,
      load: soldAs[job.units].load,
    }),
  };
};

/** The order for what the job draws, or for a remedy where it draws nothing. Unable where nothing may or need be poured. */
export const orderFor = (job: Job, assessment: Assessment, wishes: OrderWishes = {}): Order | Unable => {
  const drawn = poured(job, assessment, wishes.remedy);
  if (isUnable(drawn)) return drawn;
  const zones = zonesToPour(drawn.job);
  const parts = pourParts(drawn.job, assessment.layout.outline, zones);
  if (parts.length === 0)
    return unable(PLACE, "Nothing to pour has an outline yet (bay.outline, or floor.zones): draw it, then order.");
  const open = parts.filter((part) => part.volume === undefined).map((part) => part.name);
  if (open.length > 0)
    return unable(
      PLACE,
      `No volume for ${open.join(", ")}: the thickness is not stated, or its sloped sides run into each other.`,
    );
  const same = drawn.pours === "job" ? wishes.joints : undefined;
  return assembled(drawn.job, assessment, drawn.pours, zones, parts, same ?? planJobJoints(drawn.job, assessment));
};
