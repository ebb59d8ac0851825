export { adviseHit, type HitAdvice } from "./advise-hit.ts";
export { type Hit, type Met, metWords } from "./hit.ts";
export { type HitMistake, readHit } from "./read-hit.ts";
export type { HitWay } from "./ways.ts";
