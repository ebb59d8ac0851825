import type { CaseReactions } from "@floorworthy/assess";
import { Fold } from "../fold.tsx";
import { shown } from "../quantities/shown.ts";
import { TableWindow } from "../table-window.tsx";
import type { Units } from "../work/messages.ts";
import { TermLine } from "./term-line.tsx";

/** What each column puts on the floor, case by case. */
export const LoadCases = ({ cases, units }: { cases: readonly CaseReactions[]; units: Units }) => (
  <Fold name="cases" head={`What the columns put on the floor: ${cases.length} cases`}>
    <TableWindow name="Table of load cases">
      <thead>
        <tr>
          {["Case", "Base", "P", "Mx", "My", "Vx", "Vy"].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {cases.flatMap(({ name, counted, bases }) =>
          bases.map(({ side, P, Mx, My, Vx, Vy }) => (
            <tr key={`${name} ${side}`}>
              <th scope="row">
                {name}
                {counted === "information" && " (beside)"}
              </th>
              <td>{side}</td>
              <td>{shown(P, "N", units)}</td>
              <td>{shown(Mx, "N·mm", units)}</td>
              <td>{shown(My, "N·mm", units)}</td>
              <td>{shown(Vx, "N", units)}</td>
              <td>{shown(Vy, "N", units)}</td>
            </tr>
          )),
        )}
      </tbody>
    </TableWindow>
    {cases.map(({ name, bases }) =>
      bases.map(({ side, terms }) => (
        <Fold
          key={`${name} ${side}`}
          name="term"
          headName="term-head"
          head={
            <span className="term-words">
              {name}, {side} base
            </span>
          }
        >
          <div className="term-inside">
            {terms.map((term, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: terms never change places
              <TermLine key={i} term={term} units={units} />
            ))}
          </div>
        </Fold>
      )),
    )}
  </Fold>
);
