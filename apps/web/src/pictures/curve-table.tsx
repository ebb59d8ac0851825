import { TableWindow } from "../table-window.tsx";
import type { Curve } from "./curve-data.ts";

/** The figures of a picture, for whoever wants them or cannot see it. */
export const CurveTable = (props: {
  readonly x: string;
  readonly curves: readonly Curve[];
  readonly printX: (value: number) => string;
  readonly printY: (value: number) => string;
}) => {
  const { x, curves, printX, printY } = props;
  const rows = [...new Set(curves.flatMap(({ points }) => points.map(([v]) => v)))].sort((a, b) => a - b);
  const most = 30;
  const every = Math.ceil(rows.length / most);
  return (
    <details className="more">
      <summary>The figures</summary>
      <TableWindow name={`Figures against ${x}`}>
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
          {rows
            .filter((_, i) => i % every === 0 || i === rows.length - 1)
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
      </TableWindow>
    </details>
  );
};
