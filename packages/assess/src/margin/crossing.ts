import type { Transfer } from "@floorworthy/engine/plates";
import type { Term } from "@floorworthy/engine/quantities";
import {
  dowelStiffness,
  dowelSupport,
  interlockSpring,
  interlockWidth,
  type SlabOnGround,
  shareTerm,
} from "@floorworthy/engine/slabs";
import type { Crack, Job, Joint, Quantity } from "@floorworthy/job";
import { crackFindings } from "../facts/cracks.ts";
import { type End, loadEnd, strengthEnd } from "../facts/known.ts";
import { term } from "../facts/print.ts";

/** What holds the two sides of a joint or crack together; `open`: nothing that may be counted. */
export type Crossing =
  | { readonly kind: "open" }
  | { readonly kind: "interlock"; readonly width: number }
  | { readonly kind: "dowels"; readonly diameter: number; readonly spacing: number; readonly opening: number };

const open: Crossing = { kind: "open" };

/** mm; 1/4 in is as wide as a dowelled joint is taken to open (lecture notes on rigid pavements after Friberg 1940). */
const DOWELLED_OPENING = 6.35;
/** Dowels nobody measured, at best: 3/4 in at 12 in, common practice, no source. */
const [USUAL_DOWEL, USUAL_SPACING] = [19.05, 304.8];
/** A difference of level a straightedge shows, mm; common practice, no source. */
const STEP = 0.5;

/** Only what is stated counts at the worst end, and only with the facts its law needs. */
export const jointCrossing = ({ kind, transfer, ...joint }: Joint, end: End): Crossing => {
  const stated = transfer.known ? transfer.value : "not-stated";
  if (stated === "none" || kind === "isolation") return open;
  if (stated === "dowels") return dowelled(joint, end);
  if (stated === "interlock") return interlocked(joint.opening, end);
  return end === "best" && (kind === "saw-cut" || kind === "tooled") ? interlocked(joint.opening, end) : open;
};

const dowelled = (
  { dowelDiameter: d, dowelSpacing: s, opening }: Omit<Joint, "kind" | "transfer">,
  end: End,
): Crossing => {
  if (end === "worst" && !(d?.known && s?.known)) return open;
  return {
    kind: "dowels",
    diameter: d?.known ? strengthEnd(d, end) : USUAL_DOWEL,
    spacing: s?.known ? loadEnd(s, end) : USUAL_SPACING,
    opening: opening?.known ? loadEnd(opening, end) : DOWELLED_OPENING,
  };
};

const interlocked = (width: Quantity | undefined, end: End): Crossing => {
  if (width?.known) return { kind: "interlock", width: loadEnd(width, end) };
  return end === "worst" ? open : { kind: "interlock", width: interlockWidth };
};

/** A crack holds by its rough faces while it is narrow, level and still; nobody's word on one of these leaves it open. */
export const crackCrossing = (job: Job, crack: Crack, end: End): Crossing => {
  const { width, step } = crack;
  const stepped = step.known ? step.high > STEP : end === "worst";
  const grows = crackFindings(job).some((found) => found.name === crack.name && found.growth === "grows");
  return stepped || grows ? open : interlocked(width, end);
};

const STEEL = 200_000;

/** The same as springs along the line, with the share that crosses unfolded; nothing where nothing does. */
export const springsOf = (
  { units }: Job,
  crossing: Crossing,
  name: string,
  slab: SlabOnGround,
  end: End,
): { readonly transfer: Transfer; readonly term?: Term } => {
  if (crossing.kind === "open") return { transfer: { kind: "none" } };
  const given = (symbol: string, words: string, mm: number): Term => term(symbol, words, mm, "length", units);
  if (crossing.kind === "interlock") {
    const shear = interlockSpring(slab, crossing.width);
    if (shear === 0) return { transfer: { kind: "none" } };
    const from = [{ ...given("w", `width of ${name}`, crossing.width), clause: "interlock: Concrete Society TR34" }];
    return { transfer: { kind: "springs", shear, rotation: 0 }, term: shareTerm(slab, name, shear, from) };
  }
  const { diameter, spacing, opening } = crossing;
  const support = end === "worst" ? dowelSupport.low : dowelSupport.high;
  const shear = dowelStiffness({ diameter, opening, support, E: STEEL }) / spacing;
  const from = [
    given("d", `diameter of the dowels in ${name}`, diameter),
    given("s_d", "between dowels", spacing),
    { ...given("z", `opening of ${name}`, opening), clause: "Friberg 1940: half-endless beams on springs" },
  ];
  return { transfer: { kind: "springs", shear, rotation: 0 }, term: shareTerm(slab, name, shear, from) };
};
