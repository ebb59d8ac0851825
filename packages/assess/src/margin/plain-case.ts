import type { SupportCase } from "@floorworthy/engine/frames";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { term } from "../facts/print.ts";
import type { SideReactions, Standing, SupportDuty } from "./reactions.ts";

export const PLACE = "loads of the supports";

/** A load case in the plan of an unturned lift. */
export interface PlainCase {
  readonly id: string;
  readonly name: string;
  readonly standing: Standing;
  readonly sides: SideReactions["sides"];
}

export const ends = ({ dynamicFactor, shock }: SupportDuty): readonly (readonly [Standing, number])[] => [
  ["counted", dynamicFactor],
  ["hard-use", shock],
];

export const P = (job: Job, id: string, N: number, how: Partial<Term>): Term =>
  term("P", `vertical load on ${id}`, N, "force", job.units, how);

/** A case of engine/frames as ours: supports renamed to the lift's own. */
export const plain = (job: Job, c: SupportCase, standing: Standing, nameOf: (id: string) => string): PlainCase => ({
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
