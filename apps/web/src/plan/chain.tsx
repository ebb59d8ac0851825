import { shownLength } from "../quantities/shown.ts";
import type { Units } from "../work/messages.ts";
import type { Frame } from "./frame.ts";

/** A chain of dimensions above (`x`) or left of (`y`) what the frame holds. */
export const Chain = (props: { axis: "x" | "y"; stops: readonly number[]; frame: Frame; units: Units }) => {
  const { letters, inside } = props.frame;
  const stops = [...props.stops].sort((a, b) => a - b).filter((stop, i, all) => i === 0 || stop - all[i - 1]! > 1);
  const turn = props.axis === "x" ? undefined : `matrix(0 1 1 0 0 0)`;
  const level = (props.axis === "x" ? inside.y0 : inside.x0) - letters * 2;
  const tick = letters * 0.35;
  if (stops.length < 2) return null;
  const d = stops.map(
    (s) => `M${s} ${level + letters * 1.3}V${level - tick}M${s - tick} ${level + tick}l${2 * tick} ${-2 * tick}`,
  );
  return (
    <g className="dimensions">
      <path className="dimension" transform={turn} d={`M${stops[0]} ${level}H${stops.at(-1)}${d.join("")}`} />
      {stops.slice(1).map((to, i) => {
        const from = stops[i]!;
        const words = shownLength(to - from, props.units);
        const tight = words.length * letters * 0.58 > to - from;
        const off = level - letters * (tight && i % 2 === 1 ? 1.5 : 0.45);
        const middle = (from + to) / 2;
        return props.axis === "x" ? (
          <text key={to} x={middle} y={off} textAnchor="middle">
            {words}
          </text>
        ) : (
          <text key={to} transform={`translate(${off} ${middle}) rotate(-90)`} textAnchor="middle">
            {words}
          </text>
        );
      })}
    </g>
  );
};
