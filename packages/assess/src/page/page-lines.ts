import { nearestBarrier } from "@floorworthy/engine/anchors";
import { distanceToSegment } from "@floorworthy/engine/geometry";
import type { Job, Quantity } from "@floorworthy/job";
import type { PageAnswer, PageLine, PlacedBase } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import type { Facts } from "../facts/facts.ts";
import { basisWords } from "../facts/known.ts";
import { shown, term } from "../facts/print.ts";

type Line = (job: Job, facts: Facts) => PageLine;

/** The maker's page, line by line, in the order of the gates. */
export const pageOf = (job: Job, facts: Facts): PageAnswer => {
  const lines = [thickness, strength, days, edge, joint, crack, wall, ceiling, reinforcement, slope].map((line) =>
    line(job, facts),
  );
  const asked = lines.filter((line) => line.result !== "not-asked");
  return { verdict: verdictOf(asked), lines };
};

const verdictOf = (asked: readonly PageLine[]): PageAnswer["verdict"] =>
  asked.length === 0
    ? "not-judged"
    : asked.some((line) => line.result === "fails")
      ? "fails"
      : asked.some((line) => line.result === "not-shown")
        ? "not-shown"
        : "meets";

const notAsked = (id: string, title: string): PageLine => ({
  id,
  title,
  result: "not-asked",
  asked: "the page does not say",
  found: "",
  why: "The maker's page has no such line, or nobody has read it yet.",
});

const asks = (fact: Quantity): string => (fact.known ? basisWords(fact.basis) : "unknown");

const thickness: Line = (job, facts) => {
  const [id, title] = ["thickness", "Thickness of the slab at each base"];
  const asked = job.lift.asks.thickness;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const t = asked.high;
  const capacity = term("t_min", "least thickness the maker asks", t, "length", units, { basis: asks(asked) });
  const line = { id, title, asked: `at least ${shown(t, "length", units)}`, capacity };
  const known = facts.thickness.filter((under) => under.thickness !== undefined);
  if (facts.thickness.length === 0)
    return {
      ...line,
      result: "not-shown",
      found: "no position of the columns",
      why: "Say where the columns are to stand.",
    };
  const missing = facts.thickness.filter((under) => under.thickness === undefined);
  const thinnest = known.toSorted((a, b) => a.thickness! - b.thickness!)[0];
  if (!thinnest)
    return { ...line, result: "not-shown", found: "not measured", why: "Nobody has measured the slab at the bases." };
  const refused = [...new Set(facts.thickness.flatMap((under) => under.refused))];
  const found = `${shown(thinnest.thickness!, "length", units)} at the ${thinnest.side} base`;
  const why = [thinnest.why, ...refused].join("; ");
  const demand = term("t", `thickness that counts at the ${thinnest.side} base`, thinnest.thickness!, "length", units, {
    basis: thinnest.why,
  });
  if (thinnest.thickness! < t) {
    const result = thinnest.shown === "named" && thinnest.best! >= t ? "not-shown" : "fails";
    return { ...line, demand, result, found, why };
  }
  if (missing.length > 0) {
    return {
      ...line,
      demand,
      result: "not-shown",
      found,
      why: `nobody has measured at the ${missing.map((m) => m.side).join(" and ")} base`,
    };
  }
  return { ...line, demand, result: thinnest.shown === "named" ? "not-shown" : "meets", found, why };
};

const strength: Line = (job, facts) => {
  const [id, title] = ["strength", "Compressive strength of the concrete"];
  const asked = job.lift.asks.strength;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const capacity = term("f'c", "least compressive strength the maker asks", asked.high, "stress", units, {
    basis: asks(asked),
  });
  const line = { id, title, asked: `at least ${shown(asked.high, "stress", units)}`, capacity };
  const weakest = facts.strength.toSorted((a, b) => (a.shown ?? a.worst) - (b.shown ?? b.worst))[0];
  if (!weakest) return { ...line, result: "not-shown", found: "not shown", why: "Say where the columns are to stand." };
  const note = weakest.tensileNote ? ` ${weakest.tensileNote}` : "";
  if (weakest.shown === undefined) return { ...line, result: "not-shown", found: "not shown", why: weakest.why + note };
  const demand = term("f'c", "compressive strength shown", weakest.shown, "stress", units, { basis: weakest.why });
  const result = weakest.shown >= asked.high * (1 - 1e-9) ? "meets" : "fails";
  return { ...line, demand, result, found: shown(weakest.shown, "stress", units), why: weakest.why + note };
};

const days: Line = (job, facts) => {
  const [id, title] = ["days", "Days between pouring and drilling"];
  const asked = job.lift.asks.days;
  if (!asked.known) return notAsked(id, title);
  const line = { id, title, asked: `at least ${Math.ceil(asked.high)} days` };
  const { age } = facts;
  if (age.days === undefined) {
    return job.floor.state === "to-be-poured"
      ? {
          ...line,
          result: "not-shown",
          found: "not poured yet",
          why: "Drilling waits for the maker's days after the pour.",
        }
      : { ...line, result: "not-shown", found: "age not known", why: "Nobody said when this panel was poured." };
  }
  const result = age.days >= asked.high ? "meets" : "fails";
  return {
    ...line,
    result,
    found: `${Math.floor(age.days)} days${age.poured ? ` since ${age.poured}` : ""}`,
    why: "Counted from the last pour of the concrete under the bases.",
  };
};

const nearest = (job: Job, bases: readonly PlacedBase[], kind: "edge" | "joint" | "crack") =>
  bases
    .flatMap((base) => {
      const barriers = barriersFor(job, base).filter((b) => b.distance === kind);
      return base.anchors.flatMap((anchor) => {
        const hit = nearestBarrier(anchor.at, barriers);
        return hit ? [{ anchor: anchor.id, side: base.side, distance: hit.distance, kind: hit.barrier.kind }] : [];
      });
    })
    .toSorted((a, b) => a.distance - b.distance)[0];

const distanceLine =
  (id: "edge" | "joint" | "crack", title: string): Line =>
  (job, { bases }) => {
    const own = job.lift.asks[id];
    const asked = own.known ? own : job.lift.asks.edge;
    if (!asked.known) return notAsked(id, title);
    const { units } = job;
    const line = { id, title, asked: `at least ${shown(asked.high, "length", units)} from every anchor` };
    if (bases.length === 0 || bases.every((base) => base.anchors.length === 0)) {
      return {
        ...line,
        result: "not-shown",
        found: "no anchor positions",
        why: "The hole pattern or the columns' position is not known.",
      };
    }
    const hit = nearest(job, bases, id);
    const nothing = { edge: "no slab edge on the plan", joint: "no joint on the plan", crack: "no crack on the plan" }[
      id
    ];
    if (!hit) {
      if (id === "edge")
        return { ...line, result: "not-shown", found: nothing, why: "The slab's outline is not known." };
      return { ...line, result: "meets", found: nothing, why: "As surveyed; look again before drilling." };
    }
    return {
      ...line,
      result: hit.distance >= asked.high - 1e-6 ? "meets" : "fails",
      found: `${shown(hit.distance, "length", units)} from anchor ${hit.anchor} to the ${hit.kind}`,
      why: own.known
        ? asks(own)
        : `the page's edge distance, since ${id === "edge" ? "it" : `a ${id}`} is an edge for an anchor`,
      demand: term("c", `from anchor ${hit.anchor} to the nearest ${hit.kind}`, hit.distance, "length", units),
      capacity: term("c_min", "least distance the maker asks", asked.high, "length", units, { basis: asks(asked) }),
    };
  };

const edge = distanceLine("edge", "Anchors to the slab's edge");
const joint = distanceLine("joint", "Anchors to joints and saw cuts");
const crack = distanceLine("crack", "Anchors to cracks");

const wall: Line = (job, { bases }) => {
  const [id, title] = ["wall", "Base plates to walls"];
  const asked = job.lift.asks.wall;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const line = { id, title, asked: `at least ${shown(asked.high, "length", units)}` };
  const distances = bases.flatMap((base) =>
    job.bay.walls.flatMap(({ name, from, to }) =>
      base.outline.map((p) => ({ name, d: distanceToSegment(p, { a: from, b: to }) })),
    ),
  );
  const least = distances.toSorted((a, b) => a.d - b.d)[0];
  if (!least) return { ...line, result: "not-shown", found: "no walls on the plan", why: "The walls are not known." };
  return {
    ...line,
    result: least.d >= asked.high - 1e-6 ? "meets" : "fails",
    found: `${shown(least.d, "length", units)} to ${least.name}`,
    why: asks(asked),
  };
};

const ceiling: Line = (job) => {
  const [id, title] = ["ceiling", "Headroom for the lift itself"];
  const needs = job.lift.asks.ceiling.known
    ? job.lift.asks.ceiling
    : job.lift.overallHeight.known
      ? job.lift.overallHeight
      : job.lift.tieHeight;
  if (!needs.known) return notAsked(id, title);
  const { units } = job;
  const line = { id, title, asked: `more than ${shown(needs.high, "length", units)}` };
  const { ceiling: there } = job.bay;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not measured",
      why: "Measure the lowest point over the bay: light, opener, door track.",
    };
  return {
    ...line,
    result: there.low > needs.high ? "meets" : "fails",
    found: shown(there.low, "length", units),
    why: basisWords(there.basis),
  };
};

const reinforcement: Line = (job) => {
  const [id, title] = ["reinforcement", "Reinforcement"];
  const { reinforcement: asked } = job.lift.asks;
  if (!asked.known || asked.value === "none") return notAsked(id, title);
  const line = { id, title, asked: asked.value };
  const there = job.floor.reinforcement;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not known",
      why: "A cover meter, radar or the drawings would show it.",
    };
  const enough = there.value === asked.value || (asked.value === "mesh" && there.value === "bars");
  return { ...line, result: enough ? "meets" : "fails", found: there.value, why: basisWords(there.basis) };
};

const slope: Line = (job) => {
  const [id, title] = ["slope", "Slope of the floor under the lift"];
  const asked = job.lift.asks.slope;
  if (!asked.known) return notAsked(id, title);
  const percent = (v: number): string => `${Math.round(v * 1000) / 10} %`;
  const line = { id, title, asked: `at most ${percent(asked.low)}` };
  const { slope: there } = job.floor;
  if (!there.known)
    return {
      ...line,
      result: "not-shown",
      found: "not measured",
      why: "A level at the base corners would show it; shims and grout have a limit.",
    };
  return {
    ...line,
    result: there.high <= asked.low + 1e-9 ? "meets" : "fails",
    found: percent(there.high),
    why: basisWords(there.basis),
  };
};
