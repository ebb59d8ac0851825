export { type Edit, editText, type Path } from "./edit-text.ts";
export { type Written, writtenFacts } from "./written-facts.ts";
