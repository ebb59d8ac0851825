import type { WrittenTree } from "@floorworthy/job/listing";
import { reach } from "../../form/reach.ts";
import { writtenIn } from "../../form/written-in.ts";
import { readPlace } from "../../plan/hand/tape.ts";

/** The three things that make a first answer, and which of them are there. An open question that was answered "unknown" is answered. */
export const stepsDone = (tree: WrittenTree) => ({
  lift: typeof reach(tree, "lift") === "string" || writtenIn(reach(tree, "lift.asks")) > 0,
  floor:
    reach(tree, "floor.thickness") !== undefined ||
    writtenIn(reach(tree, "floor.readings")) > 0 ||
    writtenIn(reach(tree, "floor.zones")) > 0,
  place: Boolean(readPlace(reach(tree, "columns.left")) && readPlace(reach(tree, "columns.right"))),
});
