import type { FloorResult } from "@floorworthy/engine/plates";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { term } from "../facts/print.ts";
import type { BaseCase } from "./cases.ts";
import { tieCounts } from "./inputs.ts";

/** How far a column's head moves when its plate tilts on the slab and the slab tilts with it, mm; a stiff column.
 * Nothing where a beam holds the heads. */
export const leanOf = (job: Job, c: BaseCase, floor: FloorResult): Term | undefined => {
  const { lift, units } = job;
  if (tieCounts(job) || (lift.kind !== "two-post" && lift.kind !== "one-post")) return undefined;
  const height = [lift.tieHeight, lift.overallHeight, lift.fullHeight].find((fact) => fact.known);
  if (!height?.known) return undefined;
  const { dwdx, dwdy } = floor.rotationAt(c.base.centre);
  const { tiltX, tiltY } = c.rest.likely;
  const slab = Math.hypot(dwdx, dwdy);
  const both = Math.hypot(dwdx + tiltX, dwdy + tiltY);
  const head = term("H", "height of the column's head", height.high, "length", units);
  return term(
    "Δ",
    `lean of the ${c.side === "column" ? "" : `${c.side} `}column's head, ${c.caseName}`,
    both * height.high,
    "length",
    units,
    {
      clause: "plate on ground and rigid plate on elastic bedding (docs/theory/plates.md, frames.md)",
      formula: "H |tilt of the slab + tilt of the plate on it|",
      worked: `of which the slab ${(1000 * slab).toFixed(2)} mm per m`,
      from: [head],
    },
  );
};
