export { addToList, type Entry } from "./add-to-list.ts";
export { type Merged, mergeTexts } from "./merge.ts";
export { putInList } from "./put-in-list.ts";
export { liftFileOf, putLift, withOwnLift } from "./put-lift.ts";
export { setFact } from "./set-fact.ts";
export { setPlain } from "./set-plain.ts";
export { setZones } from "./set-zones.ts";
