import { scaleOf, ticksOf } from "./scale.ts";

/** One row of values over the same base. */
export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [number, number])[];
  readonly pen: "solid" | "dashed" | "dotted";
}

/** A line across the picture that means something: a limit, a day. */
export interface Mark {
  readonly at: number;
  readonly along: "x" | "y";
  readonly words: string;
}

const WIDE = 460;
const HIGH = 250;
const LEFT = 52;
const BOTTOM = 34;

/** Curves over a base line: told apart by their strokes and named at their ends, with the figures in a table below. */
export const CurvePicture = (props: {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly curves: readonly Curve[];
  readonly marks?: readonly Mark[];
  /** values written at the ends of ticks */
  readonly printX?: (value: number) => string;
  readonly printY?: (value: number) => string;
}) => {
  const { title, x, y, curves, marks = [], printX = plain, printY = plain } = props;
  const all = curves.flatMap(({ points }) => points);
  if (all.length === 0) return null;
  const ofX = [...all.map(([v]) => v), ...marks.flatMap((m) => (m.along === "y" ? [] : [m.at]))];
  const ofY = [0, ...all.map(([, v]) => v), ...marks.flatMap((m) => (m.along === "y" ? [m.at] : []))];
  const across = scaleOf(ofX, [LEFT, WIDE - 12]);
  const up = scaleOf(ofY, [HIGH - BOTTOM, 14]);
  return (
    <figure className="picture">
      <figcaption>{title}</figcaption>
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-label={`${title}; the figures stand in the table below`}>
        <path className="picture-axis" d={`M${LEFT} 14V${HIGH - BOTTOM}H${WIDE - 12}`} />
        {ticksOf(ofX).map((v) => (
          <text key={v} x={across(v)} y={HIGH - BOTTOM + 14} textAnchor="middle">
            {printX(v)}
          </text>
        ))}
        {ticksOf(ofY).map((v) => (
          <g key={v}>
            <path className="picture-tick" d={`M${LEFT} ${up(v)}H${WIDE - 12}`} />
            <text x={LEFT - 6} y={up(v) + 4} textAnchor="end">
              {printY(v)}
            </text>
          </g>
        ))}
        <text x={WIDE - 12} y={HIGH - 4} textAnchor="end">
          {x}
        </text>
        <text x={4} y={11}>
          {y}
        </text>
        {marks.map(({ at, along, words }) =>
          along === "y" ? (
            <g key={words} className="picture-mark">
              <path d={`M${LEFT} ${up(at)}H${WIDE - 12}`} />
              <text x={LEFT + 6} y={up(at) - 4}>
                {words}
              </text>
            </g>
          ) : (
            <g key={words} className="picture-mark">
              <path d={`M${across(at)} 14V${HIGH - BOTTOM}`} />
              <text x={across(at) + 4} y={24}>
                {words}
              </text>
            </g>
          ),
        )}
        {curves.map(({ name, points, pen }) => {
          const last = points.at(-1);
          return (
            <g key={name} className="picture-curve" data-pen={pen}>
              <polyline points={points.map(([a, b]) => `${across(a)},${up(b)}`).join(" ")} />
              {last && (
                <text x={across(last[0]) - 4} y={up(last[1]) - 5} textAnchor="end">
                  {name}
                </text>
              )}
            </g>
          );
        })}
      </svg>
      <details>
        <summary>The figures</summary>
        <div className="table-window">
          <table>
            <thead>
              <tr>
                <th scope="col">{x}</th>
                {curves.map(({ name }) => (
                  <th key={name} scope="col">
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {[...new Set(all.map(([v]) => v))]
                .sort((a, b) => a - b)
                .map((v) => (
                  <tr key={v}>
                    <th scope="row">{printX(v)}</th>
                    {curves.map(({ name, points }) => {
                      const there = points.find(([a]) => a === v);
                      return <td key={name}>{there ? printY(there[1]) : ""}</td>;
                    })}
                  </tr>
                ))}
            </tbody>
          </table>
        </div>
      </details>
    </figure>
  );
};

const plain = (value: number): string => String(Number(value.toPrecision(3)));
