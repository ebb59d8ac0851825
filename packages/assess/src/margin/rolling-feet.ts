import { mobileColumnCases } from "@floorworthy/engine/frames";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, Support } from "@floorworthy/job";
import { mean } from "./four-supports.ts";
import { P, PLACE, type PlainCase } from "./plain-case.ts";
import type { SideReactions, Standing, SupportDuty } from "./reactions.ts";

/** Uneven along the vehicle: the columns of one end carry six parts of ten. */
const HEAVY_END = 1.2;

/** The two feet nearest to the vehicle carry most: they stand under the fork. */
export const onFeet = (job: Job, supports: readonly Support[], duty: SupportDuty): PlainCase[] | Unable => {
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
