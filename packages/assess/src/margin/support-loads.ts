import { turnReaction } from "@floorworthy/engine/frames";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, Support } from "@floorworthy/job";
import { type End, loadEnd } from "../facts/known.ts";
import { liftTurn } from "../layout.ts";
import { onFour } from "./four-supports.ts";
import { onePost } from "./one-post.ts";
import { P, PLACE, type PlainCase } from "./plain-case.ts";
import type { SideReactions, SupportDuty } from "./reactions.ts";
import { onFeet } from "./rolling-feet.ts";

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
