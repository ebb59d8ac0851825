import type { PlacedBase } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import type { Drawing, Ground } from "../drawing/drawing.ts";
import { words } from "../sheets/frame.ts";
import { checkLine } from "./check-line.ts";
import { shapesBox, type TemplateShapes, templateShapes } from "./template-shapes.ts";

const MARGIN = 10;
const STRIP = 16;

/** Shapes as items of a ground at 1:1, for DXF, SVG and a plotter's sheet. */
export const templateGround = ({ outlines, circles, lines, words: named }: TemplateShapes): Ground => ({
  kind: "ground",
  tag: "template",
  name: "template",
  scale: 1,
  written: "1:1",
  origin: { x: 0, y: 0 },
  items: [
    ...outlines.map(({ tag, points, pen }) => ({ kind: "polygon", tag, points, pen, hatch: "none" }) as const),
    ...circles.map(
      ({ tag, centre, radius }) => ({ kind: "circle", tag, centre, radius, pen: "wall", hatch: "none" }) as const,
    ),
    ...lines.map(({ tag, from, to, pen }) => ({ kind: "line", tag, from, to, pen }) as const),
    ...named.map(
      ({ tag, at, words, size, align }) =>
        ({ kind: "text", tag, at, words, size, align, lettering: "bold", reads: "across" }) as const,
    ),
  ],
});

/** The template of one column at full size on one sheet of its own size, mm. */
export const templateDrawing = (job: Job, base: PlacedBase): Drawing => {
  const shapes = templateShapes(job, base);
  const box = shapesBox(shapes);
  const width = box.x1 - box.x0 + 2 * MARGIN;
  const height = box.y1 - box.y0 + 2 * MARGIN + STRIP;
  return {
    title: `Template of the ${base.side} base plate: ${job.title}`,
    description: describeTemplate(job, base),
    width,
    height,
    items: [
      { ...templateGround(shapes), origin: { x: MARGIN - box.x0, y: MARGIN - box.y0 } },
      ...checkLine({ x: MARGIN, y: height - 6 }),
      words("note-template", MARGIN + 106, height - 5, templateWords(job, base), 3),
    ],
  };
};

export const templateWords = (job: Job, base: PlacedBase): string =>
  `${base.side === "left" ? "Left" : "Right"} column of ${job.lift.name}, full size, seen from above. Compare with the real base plate before marking.`;

export const describeTemplate = (job: Job, base: PlacedBase): string =>
  `Full-size template of the ${base.side} base plate of ${job.lift.name} with ${base.anchors.length} holes, seen from above.`;
