import { distance, nearestOnSegment } from "@floorworthy/engine/geometry";
import { fromBase, preferredUnit } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase, Remedy } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import { shown, term } from "../facts/print.ts";
import { thicknessUnder } from "../facts/thickness.ts";
import { boxOf, placedBases } from "../layout.ts";

const IN = 25.4;
const WASTE = 1.07;
/** a pad reaches this far beyond the base plate on either side, at least 48 in across; common practice, no source */
const BEYOND = 12 * IN;
const LEAST = 48 * IN;
const DOWELS = 4 * IN;
const JOINT = 12 * IN;

/** What must not be done with an anchor that has walked out. */
export const notAfterFailure: readonly string[] = [
  "Not a re-torque and another year of watching: the wedge or the concrete has let go.",
  "Not a new anchor, and no glue, in the same hole.",
  "Not a new hole inside the old cone.",
];

/** Ways back into service after anchors of these sides have failed. Sizes and rules: common practice, no source. */
export const remediesAfterFailure = (job: Job, failed: readonly ("left" | "right")[]): Remedy[] => {
  const bases = placedBases(job).filter(({ side }) => failed.some((name) => name === side));
  return [pourAnew(job, bases, failed), outsideTheCone(job), otherSide(failed)].filter(
    (remedy) => remedy !== undefined,
  );
};

const sideWords = (failed: readonly string[]): string => (failed.length > 1 ? "both bases" : `the ${failed[0]} base`);

const pourAnew = (job: Job, bases: readonly PlacedBase[], failed: readonly ("left" | "right")[]): Remedy => {
  const { units, lift } = job;
  const outline = lift.base.outline;
  const box = outline ? boxOf(outline) : { x0: 0, x1: 0, y0: 0, y1: 0 };
  const across = Math.max(LEAST, box.x1 - box.x0 + 2 * BEYOND);
  const along = Math.max(LEAST, box.y1 - box.y0 + 2 * BEYOND);
  const asked = lift.asks.thickness;
  const depth = Math.max(12 * IN, asked.known ? asked.high + 6 * IN : 0);
  const count = failed.length;
  const size = [across, along, depth].map((mm) => shown(mm, "length", units)).join(" × ");
  const gross = term("V", "concrete, gross", count * across * along * depth, "volume", units, {
    formula: "n × length × width × depth",
    worked: `${count} × ${size}`,
  });
  return {
    id: "cut-and-pour-anew",
    title: `Cut out and pour ${sideWords(failed)} anew: ${count > 1 ? `${count} × ` : ""}${size}, or one strip under both columns`,
    detail: [
      "The old anchors and the cracked concrete go out together.",
      dowelWords(job, bases),
      jointWords(job, bases),
      heaviestWords(job),
      "New anchors after the maker's days and strength; no tendons, tubes or conduits where the saw goes. Have the pad checked for this lift before it is ordered.",
    ]
      .filter(Boolean)
      .join(" "),
    volume: term("V", "concrete to order, 7 % waste", count * across * along * depth * WASTE, "volume", units, {
      formula: "1.07 V",
      from: [gross],
    }),
    terms: [gross],
  };
};

const heaviestWords = (job: Job): string => {
  const heaviest = job.vehicles
    .flatMap((vehicle) => (vehicle.weight.known ? [{ name: vehicle.name, weight: vehicle.weight }] : []))
    .toSorted((a, b) => b.weight.high - a.weight.high)[0];
  return heaviest
    ? `Plan it for the rated load and for ${heaviest.name || "the heaviest vehicle"}, ${heaviest.weight.written}.`
    : "";
};

const dowelWords = (job: Job, bases: readonly PlacedBase[]): string => {
  const thin = bases.filter((base) => {
    const { thickness } = thicknessUnder(job, base);
    return thickness === undefined || thickness < DOWELS;
  });
  return thin.length === 0 && bases.length > 0
    ? `The old slab counts at least ${shown(DOWELS, "length", job.units)} there, so dowels into it are possible where it is sound.`
    : `Dowels only where the old slab counts at least ${shown(DOWELS, "length", job.units)} and is sound; otherwise make the pads large enough to stand alone, or one strip.`;
};

const jointWords = (job: Job, bases: readonly PlacedBase[]): string => {
  const near = bases.flatMap((base) =>
    base.anchors.flatMap(({ at }) =>
      barriersFor(job, base)
        .filter(({ distance: kind }) => kind === "joint")
        .map((joint) => ({ name: joint.name || joint.kind, away: distance(at, nearestOnSegment(at, joint)) })),
    ),
  );
  const nearest = near.toSorted((a, b) => a.away - b.away)[0];
  const rule = `Joints stay ${shown(JOINT, "length", job.units)} or more from the anchors`;
  return nearest && nearest.away < JOINT
    ? `${rule}; ${nearest.name} runs ${shown(nearest.away, "length", job.units)} away now, so the pad must take it in or the column must move.`
    : `${rule}.`;
};

const outsideTheCone = (job: Job): Remedy | undefined => {
  const hef = job.lift.anchors.product.effectiveEmbedment;
  if (!hef.known) return undefined;
  const unit = preferredUnit("length", job.units);
  const away = term("3 hef", "least distance from an old hole to a new one", 3 * hef.high, "length", job.units, {
    formula: "3 × hef",
    worked: `3 × ${Number(fromBase(hef.high, unit).toFixed(2))} ${unit}`,
    clause: "ACI 318-19 17.6.2.1: two cones of 1.5 hef",
  });
  return {
    id: "outside-the-old-cone",
    title: `New anchors outside the old cones: ${shown(3 * hef.high, "length", job.units)} or more from every old hole`,
    detail:
      "In sound concrete only, neither cracked nor hollow, with the maker's distances to edges and joints. As the holes of a base plate cannot be moved one by one, the whole column moves; the lift is set out and judged again at its new place, and the old holes are filled.",
    terms: [away],
  };
};

const otherSide = (failed: readonly ("left" | "right")[]): Remedy | undefined =>
  failed.length === 1
    ? {
        id: "other-side",
        title: `Look at the ${failed[0] === "left" ? "right" : "left"} base as well`,
        detail:
          "It stands on the same slab, has the same anchors, the same age and the same loads. Sound it, measure it, read every nut; likely it is done together with the first.",
        terms: [],
      }
    : undefined;
