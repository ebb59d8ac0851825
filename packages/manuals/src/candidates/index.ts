export * from "./candidate.ts";
export { saysTheSame } from "./conflicts.ts";
export { type FieldName, fieldNames } from "./field-names.ts";
export { ruleOf } from "./field-rules.ts";
export { type Findings, findCandidates } from "./find-candidates.ts";
