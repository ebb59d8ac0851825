import { distanceToSegment } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { crackFindings } from "../facts/cracks.ts";
import { floorLines } from "../facts/distances.ts";
import type { Facts } from "../facts/facts.ts";
import { shown, term } from "../facts/print.ts";
import { asks, type Line, notAsked } from "./line.ts";

type Distance = "edge" | "joint" | "crack";

/** The anchor nearest to a line of one kind, and that line by name. */
const nearest = (job: Job, { bases }: Facts, kind: Distance, counts: (name: string) => boolean) =>
  bases
    .flatMap((base) =>
      floorLines(job, base)
        .filter((line) => line.kind === kind && counts(line.name))
        .flatMap((line) =>
          base.anchors.map(({ id, at }) => ({ anchor: id, to: line.words, distance: distanceToSegment(at, line) })),
        ),
    )
    .toSorted((a, b) => a.distance - b.distance)[0];

const nothing: Record<Distance, string> = {
  edge: "no slab edge on the plan",
  joint: "no joint on the plan",
  crack: "no crack on the plan",
};

/**
 * An anchor's distance to the nearest line of a kind. Where the page has no line on joints or cracks its edge distance
 * speaks of them; a hairline crack without a step is then not an edge, since anchors are judged in cracked concrete.
 */
const distanceLine =
  (id: Distance, title: string): Line =>
  (job, facts) => {
    const own = job.lift.asks[id];
    const asked = own.known ? own : job.lift.asks.edge;
    if (!asked.known) return notAsked(id, title);
    const { units } = job;
    const line = { id, title, asked: `at least ${shown(asked.high, "length", units)} from every anchor` };
    if (facts.bases.length === 0 || facts.bases.every((base) => base.anchors.length === 0))
      return {
        ...line,
        result: "not-shown",
        found: "no anchor positions",
        why: "The hole pattern or the columns' position is not known.",
      };
    const hairlines = new Set(
      own.known ? [] : crackFindings(job).flatMap((crack) => (crack.look === "hairline" ? [crack.name] : [])),
    );
    const hit = nearest(job, facts, id, (name) => id !== "crack" || !hairlines.has(name));
    if (!hit) {
      if (id === "edge")
        return { ...line, result: "not-shown", found: nothing[id], why: "The slab's outline is not known." };
      const beside = id === "crack" && hairlines.size > 0;
      return {
        ...line,
        result: "meets",
        found: beside ? `only hairlines: ${[...hairlines].join(", ")}` : nothing[id],
        why: beside
          ? "A hairline without a step is not an edge: the margin counts the concrete as cracked. Watch it."
          : "As surveyed; look again before drilling.",
      };
    }
    return {
      ...line,
      result: hit.distance >= asked.high - 1e-6 ? "meets" : "fails",
      found: `${shown(hit.distance, "length", units)} from anchor ${hit.anchor} to the ${hit.to}`,
      why: own.known
        ? asks(own)
        : `the page's edge distance, since ${id === "edge" ? "it" : `a ${id}`} is an edge for an anchor`,
      demand: term("c", `from anchor ${hit.anchor} to the ${hit.to}`, hit.distance, "length", units),
      capacity: term("c_min", "least distance the maker asks", asked.high, "length", units, { basis: asks(asked) }),
    };
  };

export const edgeLine = distanceLine("edge", "Anchors to the slab's edge");
export const jointLine = distanceLine("joint", "Anchors to joints and saw cuts");
export const crackLine = distanceLine("crack", "Anchors to cracks");
