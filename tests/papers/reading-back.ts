/** Reading drawings back, independently of how they were written. */
import type { Dimension, Drawing, Ground, Mark } from "@floorworthy/papers";
import { boxOfText, onPaper } from "@floorworthy/papers";

/** 11'-8 1/2" or 8 1/2" or 2134 (mm) in mm. */
export const readFigure = (words: string): number => {
  if (/^\d+$/.test(words)) return Number(words);
  const match = /^(?:(\d+)'-)?(?:(\d+)(?: |"))?(?:(\d+)\/(\d+))?"?$/.exec(words);
  if (!match) throw new Error(`not a figure: ${words}`);
  const [, feet, inches, over, under] = match;
  return 25.4 * (12 * Number(feet ?? 0) + Number(inches ?? 0) + (under ? Number(over) / Number(under) : 0));
};

export const groundOf = (drawing: Drawing, name = "plan"): Ground =>
  drawing.items.find((item): item is Ground => item.kind === "ground" && item.name === name)!;

export const dimensionsOf = (ground: Ground): readonly Dimension[] =>
  ground.items.filter((item): item is Dimension => item.kind === "dimension");

const text = (drawing: Drawing) =>
  onPaper(drawing).filter((m): m is Extract<Mark, { kind: "text" }> => m.kind === "text");

export const wordsOf = (drawing: Drawing): readonly string[] => text(drawing).map((m) => m.words);

/** Pairs of texts whose boxes overlap by more than a hair. */
export const overlaps = (drawing: Drawing): readonly string[] => {
  const boxes = text(drawing).map((m) => ({ words: m.words, ...boxOfText(m) }));
  const hair = 0.12;
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (b) => Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0) > hair && Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > hair,
      )
      .map((b) => `${a.words} | ${b.words}`),
  );
};

/** Texts and points that leave the paper, or are no numbers. */
export const strays = (drawing: Drawing, margin = 0): readonly string[] => {
  const inside = (x: number, y: number) =>
    x >= margin && y >= margin && x <= drawing.width - margin && y <= drawing.height - margin;
  return onPaper(drawing).flatMap((mark) => {
    if (mark.kind === "text") {
      const b = boxOfText(mark);
      return inside(b.x0, b.y0) && inside(b.x1, b.y1) ? [] : [mark.words];
    }
    const points = mark.kind === "circle" ? [mark.centre] : mark.points;
    return points.every((p) => inside(p.x, p.y)) ? [] : [`${mark.tag} ${JSON.stringify(points[0])}`];
  });
};
