export { setFact } from "./set-fact.ts";
