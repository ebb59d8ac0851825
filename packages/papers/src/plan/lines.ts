/** Joints, cracks and pipes: told apart by the rhythm of their lines. */
import type { Point } from "@floorworthy/engine/geometry";
import type { Crack, Joint, Pipe } from "@floorworthy/job";
import type { PenName } from "../drawing/pens.ts";
import { printLength, type UnitSystem } from "../print/measure.ts";
import type { Part } from "./part.ts";

const jointPens: Readonly<Record<Joint["kind"], PenName>> = {
  "saw-cut": "saw-cut",
  tooled: "saw-cut",
  construction: "construction",
  cold: "construction",
  isolation: "isolation",
};

const jointWords: Readonly<Record<Joint["kind"], string>> = {
  "saw-cut": "saw cut",
  tooled: "tooled joint",
  construction: "construction joint",
  cold: "cold joint",
  isolation: "isolation joint",
};

const between = (p: Point, q: Point, t: number): Point => ({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t });

const named = (words: string, name: string): string =>
  name === "" || words.includes(name.toLowerCase()) || name.toLowerCase().includes(words)
    ? name || words
    : `${words} ${name}`;

export const jointsPart = (joints: readonly Joint[]): Part => ({
  items: joints.map(({ from, to, kind, state }) => ({
    kind: "line",
    tag: state === "proposed" ? "joints-to-cut" : "joints",
    from,
    to,
    pen: state === "proposed" && kind !== "isolation" ? "planned" : jointPens[kind],
  })),
  wanted: joints
    .filter(({ name, kind }) => name !== "" || kind !== "isolation")
    .map((joint, i) => ({
      tag: "labels",
      ...lettered(joint),
      at: between(joint.from, joint.to, 0.12 + 0.05 * (i % 3)),
    })),
});

/** A planned line goes by its letter, which stands in the notes. */
const lettered = ({ name, kind, state }: Joint): { words: string; lettering: "bold" | "regular" } =>
  state === "proposed" && /^[A-Z]{1,2}$/.test(name)
    ? { words: name, lettering: "bold" }
    : { words: `${named(jointWords[kind], name)}${state === "proposed" ? " (to make)" : ""}`, lettering: "regular" };

export const cracksPart = (cracks: readonly Crack[], units: UnitSystem): Part => {
  const drawn = cracks.filter((crack) => crack.line.length > 1);
  return {
    items: drawn.map(({ line }) => ({
      kind: "polyline",
      tag: "cracks",
      points: line,
      pen: "crack",
      course: "irregular",
    })),
    wanted: drawn.map(({ name, line, width }) => ({
      tag: "labels",
      words: `${named("crack", name)}${width.known ? `, ${crackWidth(width.value, units)} wide` : ", width not known"}`,
      lettering: "regular",
      at: between(line[0]!, line[1]!, 0.3),
    })),
  };
};

const crackWidth = (mm: number, units: UnitSystem): string =>
  units === "si" ? printLength(mm, units) : `${(mm / 25.4).toFixed(mm < 1.27 ? 3 : 2)} in`;

/** Lines beside a pipe at the distance to be kept clear. */
const besides = (line: readonly Point[], clear: number): readonly (readonly Point[])[] =>
  [-1, 1].flatMap((side) =>
    line.slice(1).flatMap((q, i) => {
      const p = line[i]!;
      const length = Math.hypot(q.x - p.x, q.y - p.y);
      if (!(length > 0)) return [];
      const out = { x: (-(q.y - p.y) / length) * clear * side, y: ((q.x - p.x) / length) * clear * side };
      return [
        [
          { x: p.x + out.x, y: p.y + out.y },
          { x: q.x + out.x, y: q.y + out.y },
        ],
      ];
    }),
  );

export const pipesPart = (pipes: readonly Pipe[], units: UnitSystem): Part => {
  const drawn = pipes.filter((pipe) => pipe.line.length > 1);
  return {
    items: drawn.flatMap(({ line, clear }) => [
      { kind: "polyline", tag: "pipes", points: line, pen: "pipe" } as const,
      ...(clear.known && clear.value > 0
        ? besides(line, clear.value).map(
            (points) => ({ kind: "polyline", tag: "keep-clear", points, pen: "keep-clear" }) as const,
          )
        : []),
    ]),
    wanted: drawn.map(({ name, kind, line, clear }) => ({
      tag: "labels",
      words: `${named(kind === "unknown" ? "pipe, kind not known" : kind, name)}${clear.known ? `: ${printLength(clear.value, units)} clear each side` : ""}`,
      lettering: "regular",
      at: between(line[0]!, line[1]!, 0.25),
    })),
  };
};
