import type { Drawing } from "../drawing/drawing.ts";
import { type Mark, onPaper, penOf, textLengthOf } from "../drawing/marks.ts";
import { inks } from "../drawing/pens.ts";

const escaped = (words: string): string =>
  words.replace(/[&<>"]/g, (c) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c]!);

const n = (value: number): string => String(Math.round(value * 1000) / 1000 || 0);

const stroke = (name: Mark & { kind: "path" | "circle" }): string => {
  if (!name.pen) return "";
  const { width, dashes, ink } = penOf(name.pen);
  const dashed = dashes.length ? ` stroke-dasharray="${dashes.map(n).join(" ")}"` : "";
  return ` stroke="${inks[ink]}" stroke-width="${n(width)}"${dashed}`;
};

const element = (mark: Mark): string => {
  if (mark.kind === "text") {
    const { at, words, size, align, lettering, reads } = mark;
    const turn = reads === "upward" ? ` transform="rotate(-90 ${n(at.x)} ${n(at.y)})"` : "";
    const weight = lettering === "bold" ? ` font-weight="700"` : "";
    const length = words.length > 1 ? ` textLength="${n(textLengthOf(mark))}" lengthAdjust="spacingAndGlyphs"` : "";
    return `<text x="${n(at.x)}" y="${n(at.y)}" font-size="${n(size)}" text-anchor="${align}"${weight}${length}${turn}>${escaped(words)}</text>`;
  }
  const fill = mark.fill === "none" ? "none" : inks[mark.fill];
  if (mark.kind === "circle") {
    return `<circle cx="${n(mark.centre.x)}" cy="${n(mark.centre.y)}" r="${n(mark.radius)}" fill="${fill}"${stroke(mark)}/>`;
  }
  const d = mark.points.map((p, i) => `${i ? "L" : "M"}${n(p.x)} ${n(p.y)}`).join("");
  return `<path d="${d}${mark.ends === "closed" ? "Z" : ""}" fill="${fill}"${stroke(mark)}/>`;
};

/** Neighbours with the same tag become one group. */
const grouped = (marks: readonly Mark[]): string => {
  const parts: string[] = [];
  let open: string | undefined;
  for (const mark of marks) {
    if (mark.tag !== open) {
      if (open !== undefined) parts.push("</g>");
      parts.push(`<g data-tag="${escaped(mark.tag)}">`);
      open = mark.tag;
    }
    parts.push(element(mark));
  }
  if (open !== undefined) parts.push("</g>");
  return parts.join("\n");
};

/** One drawing as a self-contained SVG, in mm of its paper, with a title and a description for people who cannot see it. */
export const drawingToSvg = (drawing: Drawing): string => {
  const { width, height, title, description } = drawing;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" role="img" fill="${inks.ink}" font-family="'DejaVu Sans Condensed', 'DejaVu Sans', 'Arial Narrow', Arial, sans-serif" font-stretch="condensed" stroke-linecap="round" stroke-linejoin="round">
<title>${escaped(title)}</title>
<desc>${escaped(description)}</desc>
<rect width="${n(width)}" height="${n(height)}" fill="${inks.paper}"/>
${grouped(onPaper(drawing))}
</svg>
`;
};
