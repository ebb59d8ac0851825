import type { Point } from "@floorworthy/engine/geometry";
import type { SlabLines } from "../../work/layer-calls.ts";
import { linesPath, ringsPath } from "../frame.ts";
import { apart } from "./apart.ts";

/** Lines of equal stress or pressure, each with its figure; where more than may be asked comes out, crossed hatch. */
export const SlabLinesLayer = ({ lines: all, letters }: { lines: SlabLines; letters: number }) => {
  const { lines, over, peak } = all;
  const r = letters * 0.5;
  const figures = lines.flatMap(({ level, paths }, i) =>
    paths
      .filter((path) => reachOf(path) > 3 * letters)
      .map((path) => ({ at: toward(path, peak.at, i), words: level.toLocaleString("en-US") })),
  );
  return (
    <g className="slab-lines" fontSize={letters * 0.8}>
      <defs>
        <pattern id="too-much" width={letters * 0.6} height={letters * 0.6} patternUnits="userSpaceOnUse">
          <path d={`M0 0L${letters * 0.6} ${letters * 0.6}M${letters * 0.6} 0L0 ${letters * 0.6}`} />
        </pattern>
      </defs>
      <path className="slab-over" d={ringsPath(over.filter((line) => closed(line)))} />
      <path className="slab-limit" d={linesPath(over)} />
      {lines.map(({ level, paths }, i) => (
        <g key={level}>
          <path d={linesPath(paths)} strokeWidth={0.75 + (1.25 * i) / Math.max(1, lines.length - 1)} />
        </g>
      ))}
      {apart(figures, letters, [peak.at]).map(({ at, words }) => (
        <text key={`${at.x} ${at.y}`} x={at.x} y={at.y + letters * 0.3} textAnchor="middle">
          {words}
        </text>
      ))}
      <g className="feasible-mark">
        <path d={`M${peak.at.x - r} ${peak.at.y}h${2 * r}M${peak.at.x} ${peak.at.y - r}v${2 * r}`} />
        <circle cx={peak.at.x} cy={peak.at.y} r={r} />
      </g>
    </g>
  );
};

const closed = (line: readonly Point[]): boolean => {
  const [a, b] = [line[0], line.at(-1)];
  return a !== undefined && b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) < 1;
};

const reachOf = (line: readonly Point[]): number => {
  const [xs, ys] = [line.map(({ x }) => x), line.map(({ y }) => y)];
  return Math.max(...xs) - Math.min(...xs) + (Math.max(...ys) - Math.min(...ys));
};

/** The point of a line in a direction of its own, so that the figures of neighbouring lines do not stand in a row. */
const toward = (line: readonly Point[], from: Point, turn: number): Point => {
  const angle = -Math.PI / 2 + turn * 0.9;
  const along = ({ x, y }: Point) => (x - from.x) * Math.cos(angle) + (y - from.y) * Math.sin(angle);
  return line.reduce((best, p) => (along(p) > along(best) ? p : best));
};
