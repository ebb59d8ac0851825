import { distance, type Point } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job, Position } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { term } from "../facts/print.ts";
import { placedBases } from "../layout.ts";
import { pageOf } from "../page/page-lines.ts";
import { lengthWords } from "../setout/length-words.ts";
import { smallestShift } from "../shift.ts";
import { type AbandonedHole, abandonedHoles, type Fill, keepAway, obstaclesFrom } from "./abandoned.ts";
import { groupRatio } from "./group-ratio.ts";
import type { Hit } from "./hit.ts";
import { padUnder } from "./hole-facts.ts";

/** One way on. `ask-first`: open once the owner has agreed. */
export interface HitWay {
  readonly id: "cut-bar" | "shift-filled" | "shift-open";
  readonly title: string;
  readonly state: "open" | "ask-first" | "closed";
  /** why it is open or closed */
  readonly why: string;
  readonly steps: readonly string[];
  /** the anchor group's worst check there; undefined when the way is closed or the margin is not computed */
  readonly check: MarginCheck | undefined;
  readonly checkWords: string;
  readonly terms: readonly Term[];
  readonly to?: Position;
}

const closed = (id: HitWay["id"], title: string, why: string): HitWay => ({
  id,
  title,
  state: "closed",
  why,
  steps: [],
  check: undefined,
  checkWords: "",
  terms: [],
});

const withRatio = (job: Job): Pick<HitWay, "check" | "checkWords"> => {
  const found = groupRatio(job);
  return "notComputed" in found
    ? { check: undefined, checkWords: `Anchor group not computed: ${found.notComputed}` }
    : {
        check: found,
        checkWords: `Anchor group: ${Number.isFinite(found.ratio) ? `${Math.round(found.ratio * 100)} %` : "more than all"} of what may be asked (${found.title.toLowerCase()}${found.governs ? `, ${found.governs}` : ""}).`,
      };
};

const CUT = "Cut this one bar";

/** One temperature bar may be cut, once, where no steel is counted on. */
export const cutBar = (job: Job, hit: Hit): HitWay => {
  const zone = padUnder(job, hit.hole);
  if (zone && (zone.kind === "pad" || zone.kind === "strip"))
    return closed("cut-bar", CUT, `The steel of ${zone.name} was put there to carry: whoever designed it decides.`);
  const other = (job.installation?.holes ?? []).find(
    ({ anchor, met }) => anchor !== hit.hole && met.known && met.value === "bar",
  );
  if (other)
    return closed(
      "cut-bar",
      CUT,
      `A bar was already met at ${other.anchor}. One is a temperature bar; two are for a licensed engineer.`,
    );
  if (hit.owner === "refuses") return closed("cut-bar", CUT, "The slab's owner does not agree.");
  const drawn = job.floor.bars.find(({ depth }) => depth.known && Math.abs(depth.value - hit.depth) <= 25.4);
  const steps = [
    ...(hit.owner === "agrees" ? [] : ["Ask the slab's owner and write the answer down."]),
    drawn
      ? `The drawings show ${drawn.size} near this depth: compare with the cover meter before cutting.`
      : "Follow the bar with the cover meter both ways: it must be one of a straight grid.",
    "Rebar-cutting bit, drill on slow, through the steel only; back to the carbide bit for the rest, same axis, same size.",
    "Full depth, cleaned twice; the anchor set as on its sheet. If the hole has grown or wandered, it is abandoned.",
  ];
  return {
    id: "cut-bar",
    title: CUT,
    state: hit.owner === "agrees" ? "open" : "ask-first",
    why: "Slab on ground without tendons: a bar for temperature and shrinkage, none of its strength is counted here. The anchors stay where they are.",
    steps,
    terms: [],
    ...withRatio(job),
  };
};

const shiftTitle: Readonly<Record<Fill, string>> = {
  filled: "Shift the whole lift, old holes filled with grout at least as strong as the slab",
  open: "Shift the whole lift, old holes left open",
};

/** Both columns move together to the nearest place that keeps every distance, also from the holes left behind. */
export const shiftLift = (job: Job, hit: Hit, fill: Fill): HitWay => {
  const id = `shift-${fill}` as const;
  const title = shiftTitle[fill];
  const holes = abandonedHoles(job, hit);
  const away = Math.max(...holes.map((hole) => keepAway(job, hole, fill)));
  const apart = term(
    "a",
    `least distance of new holes from old ones (${fill === "filled" ? "1 hole depth" : "2 hole depths"})`,
    away,
    "length",
    job.units,
    {
      clause: "common practice, no source; the anchor's sheet governs",
    },
  );
  const shift = smallestShift(job, obstaclesFrom(job, holes, fill));
  if (!shift) return closed(id, title, "The bay's outline, the base plate or the columns' place is not known.");
  if (shift.found === "nowhere")
    return closed(id, title, `There is no such place in this bay: ${shift.why.replace(/\.$/, "")}.`);
  const moved: Job = { ...job, position: shift.to };
  const fails = pageOf(moved, factsOf(moved)).lines.filter((line) => line.result === "fails");
  if (fails.length > 0)
    return closed(
      id,
      title,
      `At the nearest place the maker's page is not kept: ${fails.map((l) => l.title.toLowerCase()).join(", ")}.`,
    );
  return {
    id,
    title,
    state: "open",
    why: moveWords(job, shift.dx, shift.dy),
    steps: [
      ...(fill === "filled"
        ? [
            "Clean the old holes, fill them with non-shrink grout at least as strong as the slab, let it reach that strength first.",
          ]
        : ["Old holes kept dry and closed with a soft plug, marked, never used again."]),
      "Set out anew from the two walls, every hole of the lift; thickness and joints looked at again at the new place.",
      "Every new hole scanned before the first is drilled.",
    ],
    terms: [
      apart,
      term("m", "move of the lift", Math.hypot(shift.dx, shift.dy), "length", job.units),
      term("a_new", "nearest new hole to an old one", nearest(moved, holes), "length", job.units),
    ],
    to: shift.to,
    ...withRatio(moved),
  };
};

const nearest = (moved: Job, holes: readonly AbandonedHole[]): number => {
  const anchors: Point[] = placedBases(moved).flatMap((base) => base.anchors.map(({ at }) => at));
  return Math.min(...anchors.flatMap((at) => holes.map((hole) => distance(at, hole.at))));
};

const moveWords = (job: Job, dx: number, dy: number): string => {
  const length = (mm: number): string => lengthWords(Math.abs(mm), job.units);
  const ways = [
    ...(Math.abs(dy) > 0.5 ? [`${length(dy)} toward the ${dy > 0 ? "door" : "back wall"}`] : []),
    ...(Math.abs(dx) > 0.5 ? [`${length(dx)} to the ${dx > 0 ? "right" : "left"}`] : []),
  ];
  return `It goes ${ways.join(" and ")}: the nearest mark that keeps every distance.`;
};
