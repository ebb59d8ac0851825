import type { MarginCheck } from "../assessment.ts";

/** holds: also in cracked concrete; thin: only in uncracked; short: not. */
export const wordOf = (checks: readonly MarginCheck[]): "holds" | "thin" | "short" => {
  const all = (concrete: "cracked" | "uncracked") => checks.every((c) => c.concrete === concrete || c.ratio <= 1);
  return all("uncracked") ? "holds" : all("cracked") ? "thin" : "short";
};
