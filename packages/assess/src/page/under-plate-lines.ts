import { crackFindings } from "../facts/cracks.ts";
import { linesUnder } from "../facts/distances.ts";
import { straddles } from "../facts/straddle.ts";
import { type Line, nothingToSay } from "./line.ts";

const WHY =
  "No page prints it, every page means it: a figure for the slab speaks of one slab under the whole plate (common practice).";

/** No base on a footing or half on one. */
export const footingLine: Line = (job, facts) => {
  const [id, title] = ["footing", "Base plates clear of footings"];
  const found = straddles(job, facts).filter(({ kind }) => kind === "footing");
  return found.length === 0
    ? nothingToSay(id, title)
    : {
        id,
        title,
        result: "fails",
        asked: "no base on or partly on a footing",
        found: found.map(({ words }) => words).join("; "),
        why: "A footing carries the building and does not move with the slab: the base would bend over its edge, and cutting it is for an engineer.",
      };
};

/** One thickness, one pour under each plate. */
export const oneSlabLine: Line = (job, facts) => {
  const [id, title] = ["one-slab", "One slab under each base plate"];
  const found = straddles(job, facts).filter(({ kind }) => kind !== "footing");
  if (found.length === 0) return nothingToSay(id, title);
  return {
    id,
    title,
    result: found.some(({ kind }) => kind === "zone") ? "fails" : "not-shown",
    asked: "the whole plate on one thickness",
    found: found.map(({ words }) => words).join("; "),
    why: `${WHY} The two are never averaged.`,
  };
};

/** No joint, open crack or slab edge under a plate, whatever the anchors' distances. */
export const underPlateLine: Line = (job, { bases }) => {
  const [id, title] = ["under-plate", "Nothing open under the base plates"];
  const hairlines = new Set(crackFindings(job).flatMap(({ name, look }) => (look === "hairline" ? [name] : [])));
  const found = bases.flatMap((base) =>
    linesUnder(job, base)
      .filter(({ kind, name }) => kind !== "pipe" && !(kind === "crack" && hairlines.has(name)))
      .map(({ words }) => `the ${words} runs under the ${base.side} base plate`),
  );
  return found.length === 0
    ? nothingToSay(id, title)
    : {
        id,
        title,
        result: "fails",
        asked: "no joint, crack or edge under a plate",
        found: [...new Set(found)].join("; "),
        why: WHY,
      };
};
