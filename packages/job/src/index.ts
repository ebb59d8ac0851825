export { assumed, type Default, defaults, presumptiveBearing, thicknessAllowance } from "./defaults.ts";
export { setFact, setZones } from "./editing/index.ts";
export * from "./fact.ts";
export * from "./floor.ts";
export { type Issue, type IssueCode, issueCatalogue, printIssue } from "./issues/index.ts";
export * from "./job.ts";
export * from "./lift.ts";
export { currencyOf, INVENTED, inventedPrices, type PriceTaken, priceOf } from "./price-defaults.ts";
export { type JobReading, type LiftReading, type ReadOptions, readJob, readLift } from "./reading/index.ts";
