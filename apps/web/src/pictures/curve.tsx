import type { Curve, Mark } from "./curve-data.ts";
import { CurveTable } from "./curve-table.tsx";
import { freest } from "./freest.ts";
import { scaleOf, ticksOf } from "./scale.ts";

const WIDE = 480;
const HIGH = 270;
const LEFT = 62;
const RIGHT = 14;
const TOP = 26;
const BOTTOM = 40;
const LINE = 14;

/** Curves over a base line: told apart by their strokes, with the figures in a table below. */
export const CurvePicture = (props: {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly curves: readonly Curve[];
  readonly marks?: readonly Mark[];
  /** values written at ticks and in the table */
  readonly printX?: (value: number) => string;
  readonly printY?: (value: number) => string;
}) => {
  const { title, x, y, curves, marks = [], printX = plain, printY = plain } = props;
  const drawn = curves.filter(({ points }) => points.length > 0);
  const all = drawn.flatMap(({ points }) => points);
  if (all.length === 0) return null;
  const ofX = [...all.map(([v]) => v), ...marks.flatMap((m) => (m.along === "y" ? [] : [m.at]))];
  const ofY = [0, ...all.map(([, v]) => v), ...marks.flatMap((m) => (m.along === "y" ? [m.at] : []))];
  const across = scaleOf(ofX, [LEFT, WIDE - RIGHT]);
  const up = scaleOf(ofY, [HIGH - BOTTOM, TOP]);
  const inked = all.map(([a, b]) => ({ x: across(a), y: up(b) }));
  const placesAlong = (y: number) =>
    [y - 5, y + 14].flatMap((line) => [
      { x: WIDE - RIGHT - 4, y: line, textAnchor: "end" as const },
      { x: LEFT + 6, y: line, textAnchor: "start" as const },
    ]);
  return (
    <figure className="picture">
      <figcaption>{title}</figcaption>
      {drawn.length > 1 && (
        <ul className="picture-legend">
          {drawn.map(({ name, pen }) => (
            <li key={name}>
              <svg viewBox="0 0 34 8" width="34" height="8" aria-hidden="true" className="picture-curve" data-pen={pen}>
                <polyline points="0,4 34,4" />
              </svg>
              {name}
            </li>
          ))}
        </ul>
      )}
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-label={`${title}; the figures stand in the table below`}>
        {ticksOf(ofX).map((v) => (
          <g key={v}>
            <path className="picture-tick" d={`M${across(v)} ${TOP}V${HIGH - BOTTOM}`} />
            <text x={across(v)} y={HIGH - BOTTOM + 15} textAnchor="middle">
              {printX(v)}
            </text>
          </g>
        ))}
        {ticksOf(ofY).map((v) => (
          <g key={v}>
            <path className="picture-tick" d={`M${LEFT} ${up(v)}H${WIDE - RIGHT}`} />
            <text x={LEFT - 6} y={up(v) + 4} textAnchor="end">
              {printY(v)}
            </text>
          </g>
        ))}
        <path className="picture-axis" d={`M${LEFT} ${TOP}V${HIGH - BOTTOM}H${WIDE - RIGHT}`} />
        <text className="picture-name" x={WIDE - RIGHT} y={HIGH - 6} textAnchor="end">
          {x}
        </text>
        <text className="picture-name" x={4} y={14}>
          {y}
        </text>
        {marks.map(({ at, along, words }, i) =>
          along === "y" ? (
            <g key={words} className="picture-mark">
              <path d={`M${LEFT} ${up(at)}H${WIDE - RIGHT}`} />
              <text {...freest(placesAlong(up(at)), words, inked)}>{words}</text>
            </g>
          ) : (
            <g key={words} className="picture-mark">
              <path d={`M${across(at)} ${TOP}V${HIGH - BOTTOM}`} />
              <text
                x={across(at) + (across(at) > WIDE / 2 ? -5 : 5)}
                y={HIGH - BOTTOM - 8 - i * LINE}
                textAnchor={across(at) > WIDE / 2 ? "end" : "start"}
              >
                {words}
              </text>
            </g>
          ),
        )}
        {drawn.map(({ name, points, pen }) => (
          <g key={name} className="picture-curve" data-pen={pen}>
            <polyline points={points.map(([a, b]) => `${across(a)},${up(b)}`).join(" ")} />
          </g>
        ))}
      </svg>
      <CurveTable x={x} curves={drawn} printX={printX} printY={printY} />
    </figure>
  );
};

const plain = (value: number): string => String(Number(value.toPrecision(3)));
