export { addToList, type Entry } from "./add-to-list.ts";
export { liftFileOf, putLift, withOwnLift } from "./put-lift.ts";
export { setFact } from "./set-fact.ts";
