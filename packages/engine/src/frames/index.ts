export type { Reaction } from "./reaction.ts";
