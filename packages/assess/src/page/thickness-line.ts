import type { PageLine } from "../assessment.ts";
import { shown, term } from "../facts/print.ts";
import type { BaseThickness } from "../facts/thickness.ts";
import { asks, type Line, notAsked } from "./line.ts";

const [id, title] = ["thickness", "Thickness of the slab at each base"];

export const thicknessLine: Line = (job, { thickness }) => {
  const asked = job.lift.asks.thickness;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const t = asked.high;
  const capacity = term("t_min", "least thickness the maker asks", t, "length", units, { basis: asks(asked) });
  const line = { id, title, asked: `at least ${shown(t, "length", units)}`, capacity };
  if (thickness.length === 0)
    return {
      ...line,
      result: "not-shown",
      found: "no position of the columns",
      why: "Say where the columns are to stand.",
    };
  const capped = thickness.filter((under) => under.atMost !== undefined).toSorted((a, b) => a.atMost! - b.atMost!)[0];
  if (capped && capped.atMost! < t)
    return {
      ...line,
      result: "fails",
      found: `at most ${shown(capped.atMost!, "length", units)} at the ${capped.side} base`,
      why: whyOf(capped.why, thickness),
    };
  const known = thickness.filter((under) => under.thickness !== undefined);
  const thinnest = known.toSorted((a, b) => a.thickness! - b.thickness!)[0];
  if (!thinnest)
    return { ...line, result: "not-shown", found: "not measured", why: whyOf(unmeasured(thickness), thickness) };
  return { ...line, ...compared(thinnest, thickness, t, units) };
};

const unmeasured = (thickness: readonly BaseThickness[]): string =>
  thickness.some((under) => under.atMost !== undefined)
    ? thickness[0]!.why
    : "Nobody has measured the slab at the bases";

const whyOf = (why: string, thickness: readonly BaseThickness[]): string =>
  [...new Set([why, ...thickness.flatMap((under) => under.refused)])].join("; ");

const compared = (
  thinnest: BaseThickness,
  thickness: readonly BaseThickness[],
  t: number,
  units: "inch-pound" | "si",
): Pick<PageLine, "result" | "found" | "why" | "demand"> => {
  const found = `${shown(thinnest.thickness!, "length", units)} at the ${thinnest.side} base`;
  const demand =
    thinnest.workings ??
    term("t", `thickness that counts at the ${thinnest.side} base`, thinnest.thickness!, "length", units, {
      basis: thinnest.why,
    });
  if (thinnest.thickness! < t) {
    const result = thinnest.shown === "named" && thinnest.best! >= t ? "not-shown" : "fails";
    return { demand, result, found, why: whyOf(thinnest.why, thickness) };
  }
  const open = thickness.filter((under) => under.thickness === undefined || under.atMost !== undefined);
  if (open.length > 0) {
    const why = open.map((under) =>
      under.atMost === undefined ? `nobody has measured at the ${under.side} base` : `${under.side} base: ${under.why}`,
    );
    return { demand, result: "not-shown", found, why: whyOf(why.join("; "), thickness) };
  }
  const soft = thickness.some((under) => under.shown === "named");
  return { demand, result: soft ? "not-shown" : "meets", found, why: whyOf(thinnest.why, thickness) };
};
