import { elasticModulus } from "@floorworthy/engine/codes/aci318-19";
import { anchorStiffness, beddingModulus, type ContactResult, solveContact } from "@floorworthy/engine/contact";
import { type LoadCase, loadCases, type Reaction, toPlan } from "@floorworthy/engine/frames";
import { type Point, polygonArea } from "@floorworthy/engine/geometry";
import { fromBase, isUnable, type Term, toBase, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { liftTurn } from "../layout.ts";
import type { JudgedInputs } from "./inputs.ts";
import type { SideReactions, Standing } from "./reactions.ts";
import { supportReactions } from "./support-loads.ts";

/** One base under one load case: what comes down on it and how the plate rests. */
export interface BaseCase {
  readonly caseName: string;
  readonly caseId: string;
  readonly standing: Standing;
  /** "left" or "right" of a two-post lift, else the support's name */
  readonly side: string;
  readonly base: PlacedBase;
  readonly reaction: Reaction;
  readonly terms: readonly Term[];
  readonly rest: Rest;
}

/**
 * How the plate rests, at the stiffnesses that each answer must fear (docs/theory/coupling.md): the slab is stressed most
 * on a stiff bed, the anchors are pulled most by a soft bed and stiff anchors, the toe is judged at the likely ones.
 */
export interface Rest {
  readonly likely: ContactResult;
  readonly forSlab: ContactResult;
  readonly forAnchors: ContactResult;
}

export const baseCases = (job: Job, inputs: JudgedInputs, bases: readonly PlacedBase[]): BaseCase[] | Unable => {
  const found = reactionsOf(job, inputs);
  if (isUnable(found)) return found;
  const cases: BaseCase[] = [];
  for (const { id, name, standing, sides } of found) {
    for (const [i, base] of bases.entries()) {
      const { side } = base;
      const { reaction, terms } = sides[side]!;
      const rest = restOf(job, inputs, base, i, reaction);
      if (isUnable(rest)) return { ...rest, place: `${rest.place}, ${side} base, ${name}` };
      cases.push({ caseId: id, caseName: name, standing, side, base, reaction, terms, rest });
    }
  }
  return cases;
};

const reactionsOf = (job: Job, inputs: JudgedInputs): SideReactions[] | Unable => {
  const turn = liftTurn(job);
  if (inputs.kind === "supports") return supportReactions(job, inputs.duty, inputs.end);
  if (job.lift.reactions.length > 0) return makersReactions(job, turn);
  const { frame, duty, soft, shock } = inputs;
  const plain = loadCases(frame, duty, soft);
  const shocked = loadCases(frame, { ...duty, dynamicFactor: shock }, soft);
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
const restOf = (job: Job, inputs: JudgedInputs, base: PlacedBase, index: number, reaction: Reaction): Rest | Unable => {
  const { h, f } = inputs.concrete[index]!;
  const local = (p: Point): Point => ({ x: p.x - base.centre.x, y: p.y - base.centre.y });
  const anchor = anchorOf(inputs);
  const bed = bedOf(job, toBase(elasticModulus(fromBase(f, "psi")), "psi"), h, polygonArea(base.outline));
  const rest = (bedding: number, stiffness: number): ContactResult | Unable =>
    solveContact(
      {
        outline: base.outline.map(local),
        anchors: base.anchors.map(({ id, at }) => ({ id, ...local(at), stiffness, preload: 0 })),
        bedding,
      },
      reaction,
    );
  const likely = rest(bed.likely, anchor);
  const forSlab = rest(bed.high, anchor);
  const forAnchors = rest(bed.low, STIFF_ANCHOR);
  if (isUnable(likely)) return likely;
  if (isUnable(forSlab)) return forSlab;
  return isUnable(forAnchors) ? forAnchors : { likely, forSlab, forAnchors };
};

/** N/mm; a base without anchors has none to stretch. */
const anchorOf = ({ product }: JudgedInputs): number => {
  if (!product) return STIFF_ANCHOR;
  const { da, hef, hnom, Ase } = product;
  const area = Ase ?? 0.75 * (Math.PI / 4) * da * da;
  return anchorStiffness(area, (hnom ?? hef) + WASHER_AND_NUT, "cracked").likely.value;
};

/** mm of bolt above the concrete that stretches with the rest. */
const WASHER_AND_NUT = 25;

/** N/mm: the stiff end of the anchors in the coupling study. */
const STIFF_ANCHOR = 100e3;

const bedOf = (
  { choices }: Job,
  Ec: number,
  h: number,
  area: number,
): { low: number; likely: number; high: number } => {
  if (choices.bedding.known)
    return { low: choices.bedding.low, likely: choices.bedding.value, high: choices.bedding.high };
  const { low, likely, high } = beddingModulus(Ec, h, area);
  return { low: low.value, likely: likely.value, high: high.value };
};

const totalPull = (contact: ContactResult): number => contact.anchorTension.reduce((sum, { T }) => sum + T, 0);

/** Total pull of the anchors of a base, and total push of its plate on the slab, N. */
export const pullOf = (c: BaseCase): number => totalPull(c.rest.forAnchors);
export const pushOf = (c: BaseCase): number => c.reaction.P + totalPull(c.rest.forAnchors);

/** The case in which `measure` is largest. */
export const most = (cases: readonly BaseCase[], measure: (c: BaseCase) => number): BaseCase | undefined =>
  cases.reduce<BaseCase | undefined>(
    (best, c) => (best === undefined || measure(c) > measure(best) ? c : best),
    undefined,
  );
