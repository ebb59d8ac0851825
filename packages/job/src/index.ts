export * from "./fact.ts";
export * from "./floor.ts";
export * from "./job.ts";
export * from "./lift.ts";
