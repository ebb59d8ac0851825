export { NEWEST } from "./migrate.ts";
export { type JobReading, type LiftReading, type ReadOptions, readJob, readLift } from "./read-job.ts";
