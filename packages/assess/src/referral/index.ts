export { type GoverningLoad, governingLoads } from "./governing.ts";
export { referral } from "./refer-job.ts";
export type { KnownFact, PackPart, Referral, ReferralLoads } from "./referral-pack.ts";
