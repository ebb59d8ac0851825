import { jobFields } from "@floorworthy/job/form";
import { FormGroup } from "../../form/form-field.tsx";
import { shown } from "../../quantities/shown.ts";
import { TableWindow } from "../../table-window.tsx";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { PartProps } from "../part-props.ts";
import { CurePicture } from "../pictures/cure-picture.tsx";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** Joints, order, and the days of the concrete. */
export const PourPart = ({ open, units }: PartProps) => {
  const work = useWork("pourPlan", [open.text, units], { pause: 300 });
  const plan = work.value?.ok ? work.value.value : undefined;
  return (
    <>
      <WorkState work={work} what="Planning the pour" />
      {plan?.order && (
        <section className="finding" aria-label="The order">
          <p className="finding-said">
            Order {shown(plan.order.ordered.value, plan.order.ordered.unit, units)}. {plan.order.bags.sentence}
          </p>
          <TableWindow name="What to order">
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Get</th>
                <th scope="col">Cost</th>
              </tr>
            </thead>
            <tbody>
              {plan.order.lines.map(({ id, what, buy, sold, cost }) => (
                <tr key={id}>
                  <th scope="row">{what}</th>
                  <td>
                    {shown(buy.value, buy.unit, units)} {sold}
                  </td>
                  <td>
                    {cost
                      ? `${Math.round(cost.amount).toLocaleString("en-US")}${cost.basis === "invented" ? " *" : ""}`
                      : ""}
                  </td>
                </tr>
              ))}
              <tr>
                <th scope="row">All</th>
                <td />
                <td>
                  <b>
                    {Math.round(plan.order.total.amount).toLocaleString("en-US")} {plan.order.total.currency}
                  </b>
                </td>
              </tr>
            </tbody>
          </TableWindow>
          {plan.order.total.invented === "some" && (
            <p className="quiet">* an invented price stands in; write your own quotes under prices.</p>
          )}
          <ul>
            {plan.order.warnings.map((warning) => (
              <li key={warning}>{warning}</li>
            ))}
          </ul>
        </section>
      )}
      {plan && !plan.order && <p className="refused">{plan.why}</p>}
      {plan?.joints && (
        <section className="finding" aria-label="Joints">
          <p className="finding-said">
            {plan.joints.basis === "planned" ? "Cut these joints" : "The joints that are there"}:{" "}
            {plan.joints.lines.length}, {shown(plan.joints.sawLength.value, plan.joints.sawLength.unit, units)} of saw
            cut.
          </p>
          <ul>
            {plan.joints.lines.map(({ name, where, reasons }) => (
              <li key={`${name} ${where}`}>
                <b>{name}</b> {where}. <span className="quiet">{reasons.join(" ")}</span>
              </li>
            ))}
            {plan.joints.notMade.map(({ what, where, reason }) => (
              <li key={`${what} ${where}`}>
                Not made: {what} {where}. {reason}
              </li>
            ))}
            {[...plan.joints.unmet.map(({ words }) => words), ...plan.joints.warnings].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      <CurePicture text={open.text} units={units} />
      <FormGroup path="" fields={fields} depth={0} only={["pour"]} />
    </>
  );
};
