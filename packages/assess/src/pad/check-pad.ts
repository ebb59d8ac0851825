import { modulusOfRupture } from "@floorworthy/engine/codes/aci318-19";
import { concreteOrder } from "@floorworthy/engine/orders";
import { keyHold, thinSlabEdge } from "@floorworthy/engine/pads";
import { fromBase, isUnable, type Term, toBase, type Unable, unable } from "@floorworthy/engine/quantities";
import { defaults, type Job } from "@floorworthy/job";
import type { MarginCheck, PageLine } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { shown, term } from "../facts/print.ts";
import { boxOf } from "../layout.ts";
import { marginOf } from "../margin/margin.ts";
import { pageOf } from "../page/page-lines.ts";
import { type Bill, billOf, priceList } from "./bill.ts";
import { designWords, type PadDesign } from "./design.ts";
import { counts, evaluatePad, type PadFigures } from "./figures.ts";
import { freeAnchors } from "./free-anchors.ts";
import { checkInUnits } from "./in-units.ts";
import { padLimits, shortfalls } from "./limits.ts";
import { type OldSlab, oldSlabOf } from "./old-slab.ts";
import { type PadPart, padParts } from "./outlines.ts";
import { type PadQuantities, quantitiesOf } from "./quantities.ts";
import { padRefused, pipesMet } from "./refusal.ts";
import { newMemory, type PadMemory, settingFor, settingKey } from "./setting.ts";
import { leastSteelCheck } from "./steel.ts";
import { withDesign } from "./with-design.ts";

/** One design with everything a person asks of it. */
export interface PadAnswer {
  readonly design: PadDesign;
  /** in a few words, ready to print */
  readonly words: string;
  readonly verdict: "meets" | "falls-short";
  /** why it falls short */
  readonly short: readonly string[];
  readonly figures: PadFigures;
  /** first crack, collapse, anchors, ground; each unfolds */
  readonly margins: readonly Term[];
  /** concrete in the forms, with the slab above it, and to order */
  readonly volumes: { readonly concrete: Term; readonly gross: Term; readonly order: Term };
  readonly quantities: PadQuantities;
  readonly bill: Bill;
  readonly checks: readonly MarginCheck[];
  /** lines of the maker's page that would still fail, save the days of waiting */
  readonly pageFails: readonly PageLine[];
  readonly notes: readonly string[];
  readonly parts: readonly PadPart[];
  /** the job with this design in it */
  readonly job: Job;
}

/**
 * Every check of one design, the page it would meet, its concrete and its cost.
 * @param detail - "pad": without the checks of the whole job's margin, for one among many
 */
export const checkPad = (
  job: Job,
  design: PadDesign,
  memory: PadMemory = newMemory(),
  detail: "whole" | "pad" = "whole",
): PadAnswer | Unable => {
  const refused = padRefused(job);
  if (refused) return refused;
  const old = oldSlabOf(job);
  const parts = padParts(job, design);
  if (isUnable(parts)) return parts;
  const met =
    design.join === "cast-with"
      ? []
      : pipesMet(
          job,
          parts.map(({ outline }) => outline),
          design.depth,
        );
  if (met.length > 0) return unable("pad", `The cut-out would meet ${met.join(", ")}.`);
  const done = evaluatePad(job, design, parts, old, memory);
  if (isUnable(done)) return unable("pad", `${designWords(design, job.units)}: ${done.reason}`);
  const changed = withDesign(job, design, parts);
  const facts = factsOf(changed);
  const pageFails = pageOf(changed, facts).lines.filter(({ result, id }) => result === "fails" && id !== "days");
  const free = freeAnchors(job, design, parts, memory);
  const limits = padLimits(job);
  const short = [
    ...shortfalls(done.figures, limits, free),
    ...pageFails.map(({ title, asked, found }) => `${title.toLowerCase()}: ${found}, asked ${asked}`),
  ];
  const quantities = quantitiesOf(job, design, parts, old.thickness);
  const steel = leastSteelCheck(design);
  const padChecks = [...done.checks, ...(steel ? [steel] : []), ...thinLine(job, changed, design, parts, old, memory)];
  const margin = detail === "whole" ? marginOf(changed, facts, "whole") : undefined;
  const marginChecks = margin?.checks ?? [];
  return {
    design,
    words: designWords(design, job.units),
    verdict: short.length === 0 ? "meets" : "falls-short",
    short,
    figures: done.figures,
    margins: marginTerms(job, done.figures, marginChecks),
    volumes: volumesOf(job, quantities),
    quantities,
    bill: billOf(job, design, quantities, priceList(job)),
    checks: [
      ...padChecks.map(
        (check): MarginCheck => ({
          ...checkInUnits(check, job.units),
          group: "pad",
          weight: counts(check) && check.id !== "pad-line-quick" ? "limit" : "advice",
        }),
      ),
      // the whole job's check counts a dowelled pad as standing alone: of that only anchors and plate are the same
      ...marginChecks.filter(
        ({ group }) => design.join !== "dowelled" || group === "anchors" || group === "base plate",
      ),
    ],
    pageFails,
    // a dowelled pad is judged here, not by the whole job's margin, which counts it as standing alone
    notes: [
      ...(margin && design.join !== "dowelled" ? [margin.sentence] : []),
      ...notesFor(job, design, done.figures, limits.anchors, free, parts, old, memory),
    ],
    parts,
    job: changed,
  };
};

const marginTerms = (job: Job, figures: PadFigures, checks: readonly MarginCheck[]): Term[] => {
  const of = (id: string): Pick<Term, "from"> => {
    const check = checks.find((c) => c.id === id);
    return check ? { from: [check.demand, check.capacity] } : {};
  };
  return [
    term("f_r/σ", `first-crack margin, the ${figures.crackIn} cracking first`, figures.crack, "plain", job.units, {
      formula: "f_r / σ",
      ...of("slab-first-crack"),
    }),
    term("1/U", "collapse margin, yield lines and bending", figures.collapse, "plain", job.units, {
      formula: "capacity / demand",
    }),
    term(
      "N_a/N",
      `anchor margin in cracked concrete (${figures.anchorsGovern.toLowerCase()})`,
      figures.anchors,
      "plain",
      job.units,
    ),
    term("q_a/q", "margin on the ground", figures.ground, "plain", job.units, {
      ...of("ground-pressure"),
      worked: `q = ${shown(figures.pressure, "pressure", job.units)}`,
    }),
  ];
};

const volumesOf = (job: Job, { concrete, gross }: PadQuantities): PadAnswer["volumes"] => {
  const waste = job.pour?.waste.known ? job.pour.waste.value : defaults.waste.value / 100;
  const unit = job.units === "si" ? "m³" : "yd³";
  const order = concreteOrder(concrete, { waste, step: 0, load: toBase(10, "yd³"), unit });
  return {
    concrete: term("V", "concrete in the forms", concrete, "volume", job.units),
    gross: term("V_g", "with the slab above it", gross, "volume", job.units),
    order: order.ordered,
  };
};

/** Bending of the thin slab at the line where it meets a pad cast with it: the quick figure beside the plate's. */
const thinLine = (
  job: Job,
  changed: Job,
  design: PadDesign,
  parts: readonly PadPart[],
  old: OldSlab,
  memory: PadMemory,
) => {
  if (design.join !== "cast-with" || design.size.shape !== "two-pads" || design.depth <= old.thickness) return [];
  const setting = settingFor(changed, memory, settingKey(design));
  if (isUnable(setting)) return [];
  const slab = { E: setting.E, nu: 0.15, h: old.thickness, k: setting.inputs.k };
  const allowed: Term = {
    symbol: "f_r/m",
    words: "modulus of rupture over the asked margin",
    value: setting.fr / padLimits(job).crack,
    unit: "MPa",
    clause: "ACI 318-19 19.2.3.1",
  };
  const worst = setting.counted
    .map((c) => {
      const part = parts.find(({ name }) => name.startsWith(c.side)) ?? parts[0]!;
      const box = boxOf(part.outline);
      return { c, edge: thinSlabEdge(slab, { x: box.x1 - box.x0, y: box.y1 - box.y0 }, c.reaction) };
    })
    .reduce((a, b) => (b.edge.stress.value > a.edge.stress.value ? b : a));
  return [
    {
      id: "pad-line-quick",
      title: "Thin slab along the pad's edge, quick figure beside the plate",
      demand: worst.edge.stress,
      capacity: allowed,
      ratio: worst.edge.stress.value / allowed.value,
      clause: "rigid pad on springs (our own derivation)",
      governs: `${worst.c.side} base, ${worst.c.caseName}`,
    },
  ];
};

const notesFor = (
  job: Job,
  design: PadDesign,
  figures: PadFigures,
  anchorsWished: number,
  free: number,
  parts: readonly PadPart[],
  old: OldSlab,
  memory: PadMemory,
): string[] => {
  const notes: string[] = [];
  if (free < anchorsWished)
    notes.push(
      `The anchors, not the pad, are the limit: even in concrete without an edge they hold ${free.toFixed(2)} of what is asked of them (${figures.anchorsGovern.toLowerCase()}). No pad cures that; the lift's maker may allow longer anchors or an overhead beam.`,
    );
  if (parts.some(({ cut }) => cut === "clipped"))
    notes.push("The pad is cut short at the floor's edge or at the distance kept to it.");
  if (design.join === "dowelled")
    notes.push(
      "This design counts on its dowels, which carry shear only. The check of a whole job counts such a pad as standing alone; have an engineer see it where that falls short.",
    );
  if (design.join === "undercut") {
    const fr = toBase(modulusOfRupture(fromBase(old.strength, "psi")), "psi");
    const hold = keyHold({ h: old.thickness, fr, unitWeight: 23.56e-6 }, 1.4);
    notes.push(
      `The key is not counted in the margins. Before the old slab cracks it holds down ${fromBase(hold.value, "lb/in").toFixed(1)} lb/in (${hold.value.toFixed(2)} N/mm) of key.`,
    );
  }
  if (design.join === "cast-with" && design.size.shape !== "whole-bay")
    notes.push(
      "A thick part pins the slab as it shrinks: slope its sides, and put the joints 12 in (300 mm) and more beyond them, one between the columns where it can be.",
    );
  if (design.reinforcement.kind === "bars")
    notes.push("Keep a clear window at every anchor line: no bar within reach of the drill.");
  const heavy = job.lift.rated.known && job.lift.rated.value >= toBase(15000, "lb");
  if (heavy) notes.push("For lifts of 15,000 lb (6.8 t) and more an engineer's letter is advised.");
  const setting = settingFor(job, memory, "bare");
  if (!isUnable(setting)) notes.push(...setting.inputs.assumed.map((one) => `Assumed: ${one}.`));
  return notes;
};
