import {
  type FourPost,
  fourPostCases,
  mobileColumnCases,
  onePostCases,
  type SupportCase,
  scissorCases,
  turnReaction,
} from "@floorworthy/engine/frames";
import type { Point } from "@floorworthy/engine/geometry";
import { isUnable, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, Support } from "@floorworthy/job";
import { type End, loadEnd } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { liftTurn } from "../layout.ts";
import type { SideReactions, Standing, SupportDuty } from "./reactions.ts";

const PLACE = "loads of the supports";
/** Shares that come to less than this leave load out. */
const WHOLE = 0.98;

/** Cases of every support at once, in plan axes; or why this lift's loads cannot be computed. */
export const supportReactions = (job: Job, duty: SupportDuty, end: End): SideReactions[] | Unable => {
  const { supports, kind } = job.lift;
  const twice = supports.find(({ id }, i) => supports.findIndex((s) => s.id === id) !== i);
  if (twice) return unable(PLACE, `Two supports are called "${twice.id}": give each a name of its own.`);
  const allShares = supports.reduce((sum, { share }) => sum + (share.known ? share.high : 0), 0);
  if (supports.length > 0 && supports.every((s) => s.P.known)) return turned(job, [makers(job, supports)]);
  if (supports.length > 0 && supports.every((s) => s.share.known) && allShares < WHOLE)
    return unable(
      PLACE,
      `The shares of the supports come to ${Math.round(allShares * 100)} % of the load, not to all of it.`,
    );
  if (supports.length > 0 && supports.every((s) => s.share.known)) return turned(job, shared(job, supports, duty, end));
  if (kind === "one-post") return turnedOr(job, onePost(job, duty));
  if (kind === "four-post") return turnedOr(job, onFour(job, supports, duty, "posts"));
  if (kind === "scissor") return turnedOr(job, onFour(job, supports, duty, "ends of the frames"));
  if (kind === "mobile-columns") return turnedOr(job, onFeet(job, supports, duty));
  return unable(PLACE, `How a lift of kind "${kind}" loads its supports is not known: give the maker's load of each.`);
};

interface PlainCase {
  readonly id: string;
  readonly name: string;
  readonly standing: Standing;
  readonly sides: SideReactions["sides"];
}

const turnedOr = (job: Job, cases: readonly PlainCase[] | Unable): SideReactions[] | Unable =>
  isUnable(cases) ? cases : turned(job, cases);

/** Into the plan with the lift. */
const turned = (job: Job, cases: readonly PlainCase[]): SideReactions[] => {
  const turn = liftTurn(job);
  return cases.map((c) => ({
    ...c,
    sides: Object.fromEntries(
      Object.entries(c.sides).map(([side, { reaction, terms }]) => [
        side,
        { reaction: turnReaction(reaction, turn), terms },
      ]),
    ),
  }));
};

const P = (job: Job, id: string, N: number, how: Partial<Term>): Term =>
  term("P", `vertical load on ${id}`, N, "force", job.units, how);

/** The maker's own loads of every support; moments left out count as none. */
const makers = (job: Job, supports: readonly Support[]): PlainCase => ({
  id: "maker",
  name: "the maker's loads on the supports",
  standing: "counted",
  sides: Object.fromEntries(
    supports.map(({ id, P: load, Mx, My }) => {
      const value = (fact: Support["P"]): number => (fact.known ? fact.high : 0);
      const reaction = { P: value(load), Mx: value(Mx), My: value(My), Vx: 0, Vy: 0 };
      return [id, { reaction, terms: [P(job, id, reaction.P, { basis: "documented: the maker's own loads" })] }];
    }),
  ),
});

const shared = (job: Job, supports: readonly Support[], duty: SupportDuty, end: End): PlainCase[] => {
  const at = (factor: number): SideReactions["sides"] =>
    Object.fromEntries(
      supports.map(({ id, share }) => {
        const part = share.known ? loadEnd(share, end) : 0;
        const N = part * factor * duty.weight + duty.columnWeight;
        const how = { formula: "share × φ W + W_c", worked: `share ${part}`, basis: "the maker's share" };
        return [id, { reaction: { P: N, Mx: 0, My: 0, Vx: 0, Vy: 0 }, terms: [P(job, id, N, how)] }];
      }),
    );
  return [
    { id: "shared", name: "rated load, shared as stated", standing: "counted", sides: at(duty.dynamicFactor) },
    { id: "shared-heavy", name: "the same, stopped hard", standing: "hard-use", sides: at(duty.shock) },
  ];
};

const onePost = (job: Job, duty: SupportDuty): PlainCase[] | Unable => {
  const id = job.lift.supports[0]?.id ?? "column";
  const found: PlainCase[] = [];
  for (const [i, { reach, padSpacing }] of duty.pads.entries())
    for (const [standing, factor] of ends(duty)) {
      const cases = onePostCases({
        weight: duty.weight,
        dynamicFactor: factor,
        columnWeight: duty.columnWeight,
        reach,
        foreAft: 0,
        padSpacing,
        fullRise: duty.fullRise,
        workForce: duty.workForce,
        side: "left",
      });
      if (isUnable(cases)) return cases;
      const kept = cases.filter((c) => c.id.startsWith("toward-") === (standing === "hard-use"));
      found.push(...kept.map((c) => plain(job, { ...c, id: `${c.id}-${i}` }, standing, () => id)));
    }
  return found;
};

const ends = ({ dynamicFactor, shock }: SupportDuty): readonly (readonly [Standing, number])[] => [
  ["counted", dynamicFactor],
  ["hard-use", shock],
];

/** A case of engine/frames as ours: supports renamed to the lift's own. */
const plain = (job: Job, c: SupportCase, standing: Standing, nameOf: (id: string) => string): PlainCase => ({
  id: `${c.id}-${standing}`,
  name: standing === "hard-use" ? `${c.name}, stopped hard` : c.name,
  standing: c.standing === "information" ? "information" : standing,
  sides: Object.fromEntries(
    c.supports.map(({ id, reaction }) => {
      const name = nameOf(id);
      return [name, { reaction, terms: [P(job, name, reaction.P, { formula: "N + own weight", from: c.terms })] }];
    }),
  ),
});

/** Posts or frame ends may stand this much off their rectangle, mm. */
const OFF = 75;

const onFour = (
  job: Job,
  supports: readonly Support[],
  duty: SupportDuty,
  words: "posts" | "ends of the frames",
): PlainCase[] | Unable => {
  const corners = rectangle(supports.map(({ at }) => at));
  if (!corners)
    return unable(
      PLACE,
      `The four ${words} are not given as a rectangle: give their places, or the maker's load of each.`,
    );
  const { width, length, middle } = corners;
  const nameOf = (corner: string): string =>
    supports.find(({ at }) => corner === `${at.x < middle.x ? "left" : "right"}-${at.y < middle.y ? "front" : "rear"}`)!
      .id;
  // the vehicle stands over the lift's origin
  const place = { width, length, offsetX: -middle.x, offsetY: -middle.y };
  const found: PlainCase[] = [];
  for (const [standing, factor] of ends(duty)) {
    const common = { weight: duty.weight, dynamicFactor: factor, ...place, workForce: duty.workForce };
    const cases =
      words === "posts"
        ? fourPostCases({ ...common, postWeight: duty.columnWeight, runwayHeight: duty.fullRise } satisfies FourPost)
        : scissorCases({ ...common, ownWeight: 4 * duty.columnWeight, fullRise: duty.fullRise, fixedEnds: "front" });
    if (isUnable(cases)) return cases;
    const hard = /^(toward-|left-heavy|right-heavy)/;
    const kept =
      standing === "counted"
        ? cases.filter((c) => !hard.test(c.id))
        : cases.filter((c) => c.standing === "design" && !c.id.startsWith("work-"));
    found.push(...kept.map((c) => plain(job, c, standing, nameOf)));
  }
  return found;
};

const rectangle = (places: readonly Point[]) => {
  if (places.length !== 4) return undefined;
  const middle = { x: mean(places.map((p) => p.x)), y: mean(places.map((p) => p.y)) };
  const [dx, dy] = [places.map((p) => Math.abs(p.x - middle.x)), places.map((p) => Math.abs(p.y - middle.y))];
  const [width, length] = [2 * mean(dx), 2 * mean(dy)];
  const quarters = new Set(places.map((p) => `${p.x < middle.x},${p.y < middle.y}`));
  const square = [...dx.map((d) => d - width / 2), ...dy.map((d) => d - length / 2)].every((d) => Math.abs(d) <= OFF);
  return quarters.size === 4 && square ? { width, length, middle } : undefined;
};

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Uneven along the vehicle: the columns of one end carry six parts of ten. */
const HEAVY_END = 1.2;

/** The two feet nearest to the vehicle carry most: they stand under the fork. */
const onFeet = (job: Job, supports: readonly Support[], duty: SupportDuty): PlainCase[] | Unable => {
  const columns = [...new Set(supports.map((s) => s.column ?? ""))].map((column) =>
    supports.filter((s) => (s.column ?? "") === column),
  );
  if (supports.length === 0 || columns.some((feet) => feet.length !== 4))
    return unable(
      PLACE,
      "The feet of the mobile columns are not given four to each named column: give them, or the maker's load of each foot.",
    );
  const each = duty.weight / columns.length;
  const build = (id: string, name: string, standing: Standing, of: (feet: readonly Support[]) => number) => {
    const sides: Record<string, SideReactions["sides"][string]> = {};
    for (const feet of columns) {
      const cases = mobileColumnCases({
        weight: each,
        dynamicFactor: of(feet),
        columnWeight: duty.columnWeight,
        trackWidth: 1,
        wheelBase: 1,
      });
      if (isUnable(cases)) return cases;
      const front = feet.toSorted((p, q) => Math.abs(p.at.x) - Math.abs(q.at.x)).slice(0, 2);
      for (const foot of feet) {
        const part = cases[0]!.supports.find((s) => s.id === (front.includes(foot) ? "front-left" : "rear-left"))!;
        const terms = [P(job, foot.id, part.reaction.P, { from: cases[0]!.terms })];
        sides[foot.id] = { reaction: part.reaction, terms };
      }
    }
    return { id, name, standing, sides } satisfies PlainCase;
  };
  const toDoor = (feet: readonly Support[]): number => mean(feet.map((f) => f.at.y));
  const { dynamicFactor, shock } = duty;
  const cases = [
    build("rated", "rated load on every column", "counted", () => dynamicFactor),
    build("door-heavy", "60/40 toward the door, stopped hard", "hard-use", (f) =>
      toDoor(f) > 0 ? HEAVY_END * shock : shock * (2 - HEAVY_END),
    ),
    build("back-heavy", "60/40 toward the back, stopped hard", "hard-use", (f) =>
      toDoor(f) < 0 ? HEAVY_END * shock : shock * (2 - HEAVY_END),
    ),
  ];
  return cases.find(isUnable) ?? (cases as PlainCase[]);
};
