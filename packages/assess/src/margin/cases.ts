import { elasticModulus } from "@floorworthy/engine/codes/aci318-19";
import { anchorStiffness, beddingModulus, type ContactResult, solveContact } from "@floorworthy/engine/contact";
import { type LoadCase, loadCases, type Reaction, toPlan } from "@floorworthy/engine/frames";
import { polygonArea } from "@floorworthy/engine/geometry";
import { fromBase, isUnable, type Term, toBase, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { liftTurn } from "../layout.ts";
import type { MarginInputs } from "./inputs.ts";

/**
 * counted: rated load, evenly on the pads, at every height, with hands at work. hard-use: 60/40 between the ends, the
 * corners or the columns, and stopped hard on the way down; keeps a margin from being called ample. information:
 * decides nothing.
 */
export type Standing = "counted" | "hard-use" | "information";

/** One base under one load case: what comes down on it and how the plate rests. */
export interface BaseCase {
  readonly caseName: string;
  readonly caseId: string;
  readonly standing: Standing;
  readonly side: "left" | "right";
  readonly base: PlacedBase;
  readonly reaction: Reaction;
  readonly terms: readonly Term[];
  readonly contact: ContactResult;
}

export const baseCases = (job: Job, inputs: MarginInputs, bases: readonly PlacedBase[]): BaseCase[] | Unable => {
  const found = reactionsOf(job, inputs);
  if (isUnable(found)) return found;
  const cases: BaseCase[] = [];
  for (const { id, name, standing, sides } of found) {
    for (const [i, side] of (["left", "right"] as const).entries()) {
      const base = bases[i]!;
      const { reaction, terms } = sides[side];
      const contact = restOf(inputs, base, i, reaction);
      if (isUnable(contact)) return { ...contact, place: `${contact.place}, ${side} base, ${name}` };
      cases.push({ caseId: id, caseName: name, standing, side, base, reaction, terms, contact });
    }
  }
  return cases;
};

interface SideReactions {
  readonly id: string;
  readonly name: string;
  readonly standing: Standing;
  readonly sides: Record<"left" | "right", { reaction: Reaction; terms: readonly Term[] }>;
}

const reactionsOf = (job: Job, inputs: MarginInputs): SideReactions[] | Unable => {
  const turn = liftTurn(job);
  if (job.lift.reactions.length > 0) return makersReactions(job, turn);
  const plain = loadCases(inputs.frame, inputs.duty, inputs.soft);
  const shocked = loadCases(inputs.frame, { ...inputs.duty, dynamicFactor: inputs.shock }, inputs.soft);
  if (isUnable(plain)) return plain;
  if (isUnable(shocked)) return shocked;
  const counted = plain.filter((c) => standingOf(c) !== "hard-use");
  const hard = shocked.filter((c) => standingOf(c) === "hard-use");
  return [...counted, ...hard].map((c) => ({
    id: c.id,
    name: c.name,
    standing: standingOf(c),
    sides: {
      left: { reaction: toPlan(c.left, "left", turn), terms: Object.values(c.terms.left) },
      right: { reaction: toPlan(c.right, "right", turn), terms: Object.values(c.terms.right) },
    },
  }));
};

const HARD_USE = /-heavy|-toward-|-crosswise/;

const standingOf = (c: LoadCase): Standing =>
  c.standing === "information" ? "information" : HARD_USE.test(c.id) ? "hard-use" : "counted";

/** The maker's own base reactions replace the statics; what the sheet leaves out counts as none. */
const makersReactions = (job: Job, turn: number): SideReactions[] =>
  job.lift.reactions.map((given, i) => {
    const value = (fact: (typeof given)["P"]): number => (fact.known ? fact.high : 0);
    const load = {
      P: value(given.P),
      inwardMoment: value(given.Min),
      foreAftMoment: value(given.Mfa),
      inwardShear: value(given.Vu),
      foreAftShear: value(given.Vv),
      twist: 0,
    };
    const terms: Term[] = [
      {
        symbol: "P",
        words: "vertical load on the base",
        value: load.P,
        unit: "N",
        basis: "documented: the maker's own reactions",
      },
      {
        symbol: "M_in",
        words: "inward moment at the base",
        value: load.inwardMoment,
        unit: "N·mm",
        basis: "documented: the maker's own reactions",
      },
      {
        symbol: "M_fa",
        words: "fore-aft moment at the base",
        value: load.foreAftMoment,
        unit: "N·mm",
        basis: "documented: the maker's own reactions",
      },
    ];
    const side = (s: "left" | "right") => ({ reaction: toPlan(load, s, turn), terms });
    return {
      id: `maker-${i + 1}`,
      name: `the maker's reactions: ${given.name}`,
      standing: "counted",
      sides: { left: side("left"), right: side("right") },
    };
  });

/** Rigid plate about its column's centre, in plan axes. Anchors are taken without preload: it has gone after some years. */
const restOf = (inputs: MarginInputs, base: PlacedBase, index: number, reaction: Reaction): ContactResult | Unable => {
  const { h, f } = inputs.concrete[index]!;
  const { da, hef, hnom, Ase } = inputs.product;
  const local = (p: { x: number; y: number }) => ({ x: p.x - base.centre.x, y: p.y - base.centre.y });
  const stiffness = anchorStiffness(Ase ?? 0.75 * (Math.PI / 4) * da * da, (hnom ?? hef) + 25, "cracked").likely.value;
  const Ec = toBase(elasticModulus(fromBase(f, "psi")), "psi");
  return solveContact(
    {
      outline: base.outline.map(local),
      anchors: base.anchors.map(({ id, at }) => ({ id, ...local(at), stiffness, preload: 0 })),
      bedding: beddingModulus(Ec, h, polygonArea(base.outline)).likely.value,
    },
    reaction,
  );
};

/** Total pull and total push of a base, N. */
export const pullOf = (c: BaseCase): number => c.contact.anchorTension.reduce((sum, { T }) => sum + T, 0);
export const pushOf = (c: BaseCase): number => c.reaction.P + pullOf(c);

/** The case in which `measure` is largest. */
export const most = (cases: readonly BaseCase[], measure: (c: BaseCase) => number): BaseCase | undefined =>
  cases.reduce<BaseCase | undefined>(
    (best, c) => (best === undefined || measure(c) > measure(best) ? c : best),
    undefined,
  );
