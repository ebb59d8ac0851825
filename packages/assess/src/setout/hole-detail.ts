import { effectiveDepth } from "@floorworthy/engine/anchors";
import { coarseThread, type NutAndWasher, nutAndWasher } from "@floorworthy/engine/bolts";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job, Quantity } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { shimPlan } from "../shims/shim-plan.ts";
import type { HoleCheck, StackValues } from "./hole-check.ts";
import { stackChecks } from "./stack-checks.ts";

/** One hole in section, from the underside of the slab to the end of the thread. What nobody knows is undefined. */
export interface HoleDetail {
  readonly diameter: Term | undefined;
  readonly depth: Term | undefined;
  readonly bitMark: Term | undefined;
  /** where the hole is drilled through the standing plate and its shims */
  readonly bitMarkThroughPlate: Term | undefined;
  readonly nominal: Term | undefined;
  readonly effective: Term | undefined;
  readonly thickness: Term | undefined;
  readonly coverBelow: Term | undefined;
  readonly plate: Term | undefined;
  readonly washer: Term | undefined;
  readonly nut: Term | undefined;
  readonly threads: Term | undefined;
  /** stack that is counted: the planned one, else the limit without grout */
  readonly shims: Term;
  readonly length: Term | undefined;
  readonly projection: Term | undefined;
  /** highest stack the anchor still reaches through */
  readonly shimRoom: Term | undefined;
  readonly checks: readonly HoleCheck[];
  readonly lacking: readonly string[];
}

export const holeDetail = (job: Job): HoleDetail => {
  const { lift, units } = job;
  const sheet = lift.anchors.product;
  const fact = (symbol: string, words: string, q: Quantity, end: "low" | "value" | "high" = "value") =>
    q.known ? term(symbol, words, q[end], "length", units, { basis: basisWords(q.basis) }) : undefined;
  const mm = (q: Quantity): number | undefined => (q.known ? q.value : undefined);
  const [h1, hnom, plate, length] = [sheet.holeDepth, sheet.nominalEmbedment, lift.base.thickness, sheet.length].map(
    mm,
  );
  const parts = nutOf(job);
  const pitch = parts && (parts.nut === 0 ? 0 : coarseThread(mm(sheet.diameter) ?? 0)?.pitch);
  const under = factsOf(job).thickness.filter((t) => t.thickness !== undefined);
  const thinnest = under.toSorted((a, b) => a.thickness! - b.thickness!)[0];
  const planned = plannedStack(job);
  const shims = plannedTerm(job, planned);
  const sized = (symbol: string, words: string, value: number | undefined, rest: Partial<Term> = {}) =>
    value === undefined ? undefined : term(symbol, words, value, "length", units, rest);
  const thread = pitch === undefined ? undefined : 2 * pitch;
  const above = sum(plate, parts?.washer, parts?.nut, thread);
  const projection = length === undefined || hnom === undefined ? undefined : length - hnom;
  const room = projection === undefined || above === undefined ? undefined : projection - above;
  const cover = thinnest && h1 !== undefined ? thinnest.thickness! - h1 : undefined;
  const values = { h1, hnom, d0: mm(sheet.holeDiameter), h: thinnest?.thickness, cover, length, above, planned, room };
  return {
    diameter: fact("d0", "diameter of the hole", sheet.holeDiameter),
    depth: fact("h1", "depth of the hole", sheet.holeDepth),
    bitMark: sized("m", "mark on the bit, from its tip", h1, {
      formula: "h1",
      basis: "tape or stop; drilling bare concrete",
    }),
    bitMarkThroughPlate: sized("m'", "mark on the bit through the plate, without shims", sum(h1, plate), {
      formula: "h1 + t",
    }),
    nominal: fact("hnom", "nominal embedment: how deep the anchor goes", sheet.nominalEmbedment),
    effective: effective(job, thinnest?.thickness),
    thickness:
      thinnest &&
      sized("h", `concrete that counts at the ${thinnest.side} base`, thinnest.thickness, { basis: thinnest.why }),
    coverBelow: sized("c", "concrete left below the hole", cover, { formula: "h − h1" }),
    plate: fact("t", "thickness of the base plate", lift.base.thickness),
    washer: sized("w", "washer, at most", parts?.washer, { clause: "ASME B18.21.1 type A wide; ISO 7089" }),
    nut: sized(
      "m_n",
      parts?.nut === 0 ? "no nut: a screw's length counts from under its head" : "nut, at most",
      parts?.nut,
      { clause: "ASME B18.2.2; ISO 4032" },
    ),
    threads: sized("2p", "two full threads beyond the nut", thread, { clause: "common practice, no source" }),
    shims,
    length: fact("L", "length of the anchor", sheet.length),
    projection: sized("p", "anchor above the floor when set", projection, { formula: "L − hnom" }),
    shimRoom: sized("s_room", "highest shim stack this anchor reaches through", room && Math.max(0, room), {
      formula: "L − hnom − t − w − m_n − 2p",
    }),
    checks: stackChecks(job, values),
    lacking: lackingOf(job, values),
  };
};

/** A screw anchor has a head in place of nut and thread end: its length counts from under the head. */
const nutOf = ({ lift }: Job): NutAndWasher | undefined => {
  const { diameter, kind } = lift.anchors.product;
  const parts = diameter.known ? nutAndWasher(diameter.value) : undefined;
  return parts && kind.known && kind.value === "screw" ? { ...parts, nut: 0 } : parts;
};

const sum = (...values: readonly (number | undefined)[]): number | undefined =>
  values.reduce<number | undefined>((s, v) => (s === undefined || v === undefined ? undefined : s + v), 0);

/** The highest planned stack beside an anchor, mm; undefined until the levels of both bases are known. */
const plannedStack = (job: Job): number | undefined => {
  const { bases } = shimPlan(job);
  if (bases.length === 0 || bases.some((base) => base.bedding === "not-measured")) return undefined;
  return Math.max(0, ...bases.flatMap((base) => base.anchors.map(({ stack }) => stack.height)));
};

const plannedTerm = (job: Job, planned: number | undefined): Term =>
  planned === undefined
    ? { ...shimPlan(job).limit, symbol: "s", words: "shim stack: not planned yet, so the highest without grout" }
    : term("s", "highest planned shim stack beside an anchor", planned, "length", job.units, {
        basis: "levels at the base corners",
      });

const effective = (job: Job, thickness: number | undefined): Term | undefined => {
  const { effectiveEmbedment: hef, diameter, kind } = job.lift.anchors.product;
  if (!hef.known || !diameter.known || thickness === undefined) {
    return hef.known
      ? term("hef", "effective embedment: where it holds", hef.value, "length", job.units, {
          basis: basisWords(hef.basis),
        })
      : undefined;
  }
  return effectiveDepth(
    {
      kind: kind.known && kind.value !== "sleeve" ? kind.value : "expansion",
      da: diameter.value,
      hef: hef.value,
    },
    { fc: 20, thickness, state: "cracked", supplementary: "none" },
  );
};

const lackingOf = ({ lift }: Job, { h1, hnom, d0, h, above }: StackValues): string[] => [
  ...(d0 === undefined ? ["diameter of the hole (anchor's sheet)"] : []),
  ...(h1 === undefined ? ["depth of the hole (anchor's sheet)"] : []),
  ...(hnom === undefined ? ["nominal embedment (anchor's sheet)"] : []),
  ...(lift.anchors.torque.known ? [] : ["torque (anchor's sheet and the lift's manual)"]),
  ...(lift.anchors.product.length.known ? [] : ["length of the anchor"]),
  ...(lift.base.thickness.known ? [] : ["thickness of the base plate"]),
  ...(above === undefined && lift.base.thickness.known ? ["size of the anchor's thread"] : []),
  ...(h === undefined ? ["thickness of the concrete at the bases"] : []),
];
