export { type Written, writtenFacts } from "./written-facts.ts";
