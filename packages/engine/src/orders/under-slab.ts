/** What lies below and around a pour: sheets, stone, forms, dowel glue. Lengths mm, areas mm², volumes mm³. */
import { type Polygon, polygonArea, sides } from "../geometry/index.ts";

/** Area of vapour retarder to buy: the outline and its turned-up edges, with laps. @param roll - width of the roll @param lap - 6 in (150 mm) by ASTM E1643 */
export const vapourRetarder = (outline: Polygon, roll: number, lap: number, upturn = 0): number =>
  (polygonArea(outline) + upturn * outlineLength(outline)) * (roll / (roll - lap));

/** Loose volume of base course: compacted thickness and the share it shrinks by, 0.15 to 0.25 for crushed stone (common practice, no source). */
export const baseCourse = (area: number, thickness: number, compaction: number): number =>
  (area * thickness) / (1 - compaction);

/** mm round an outline: edge forms, isolation strip, or the saw cut of a cut-out. */
export const outlineLength = (outline: Polygon): number =>
  sides(outline).reduce((s, { a, b }) => s + Math.hypot(b.x - a.x, b.y - a.y), 0);

/** Glue for dowels: the ring between hole and bar over the depth, and a share lost. */
export const dowelGlue = (count: number, bar: number, hole: number, depth: number, waste: number): number =>
  ((count * Math.PI * (hole * hole - bar * bar)) / 4) * depth * (1 + waste);

/** Whole bags of fibre for a dosage. @param volume - of concrete, mm³ @param dosage - kg/m³ @param bag - kg */
export const fibreBags = (volume: number, dosage: number, bag: number): number =>
  Math.ceil(((volume / 1e9) * dosage) / bag - 1e-9);
