import { jobFields } from "@floorworthy/job/form";
import { FormGroup } from "../../form/form-field.tsx";
import { shown, shownLength } from "../../quantities/shown.ts";
import { TableWindow } from "../../table-window.tsx";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import { HitAsk } from "../hit-ask.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** Marking, drilling, shims, torque, and what to do when the drill meets steel. */
export const AnchorsPart = ({ open, units }: PartProps) => {
  const work = useWork("setOutPlan", [open.text, units], { pause: 300 });
  const plan = work.value?.ok ? work.value.value : undefined;
  const { marks, shims, why } = plan ?? {};
  return (
    <>
      <WorkState work={work} what="Setting out" />
      {why && <p className="refused">{why}</p>}
      {marks && (
        <section className="finding" aria-label="Set-out">
          <p className="finding-said">
            {marks.drilling === "marks-only" ? "Mark it out; do not drill yet." : "Mark it out, then drill."}
          </p>
          <ul>
            {marks.before.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <TableWindow name="Marks from two walls">
            <thead>
              <tr>
                <th scope="col">Mark</th>
                <th scope="col">from the {marks.walls.x}</th>
                <th scope="col">from the {marks.walls.y}</th>
              </tr>
            </thead>
            <tbody>
              {[...marks.columns, ...marks.holes].map(({ id, at }) => (
                <tr key={id}>
                  <th scope="row">{id}</th>
                  <td>{shownLength(at.x, units)}</td>
                  <td>{shownLength(at.y, units)}</td>
                </tr>
              ))}
            </tbody>
          </TableWindow>
          <ol className="ticks-list">
            {marks.order.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        </section>
      )}
      {shims && (
        <section className="finding" aria-label="Shims">
          {shims.bases.map(({ side, bedding, corners, headAfter }) => (
            <p key={side}>
              <b>{side} base</b>: {bedding.replaceAll("-", " ")}
              {corners.length > 0 &&
                ` (${corners.map(({ id, gap }) => `${id} ${shown(gap.value, gap.unit, units)}`).join(", ")})`}
              {headAfter && `; its head then stands ${shown(headAfter.value, headAfter.unit, units)} off plumb`}.
            </p>
          ))}
          {shims.advice.map((line) => (
            <p key={line} className="quiet">
              {line}
            </p>
          ))}
        </section>
      )}
      <HitAsk text={open.text} units={units} holes={marks?.holes.map(({ id }) => id) ?? []} />
      <FormGroup path="" fields={fields} depth={0} only={["installation"]} />
    </>
  );
};
