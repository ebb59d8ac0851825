import { isUnable, type Term } from "@floorworthy/engine/quantities";
import { jobFields } from "@floorworthy/job/form";
import { useState } from "react";
import { useForm } from "../../form/form-context.ts";
import { FormGroup } from "../../form/form-field.tsx";
import { CheckLine } from "../../margin/check-line.tsx";
import { TermLine } from "../../margin/term-line.tsx";
import { BarPicture } from "../../pictures/bars.tsx";
import { CurvePicture } from "../../pictures/curve.tsx";
import { shown } from "../../quantities/shown.ts";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** What would have to be poured under the columns, what the trade's habit gives, and what two more inches buy. */
export const PadPart = ({ open, answers, units }: PartProps) => {
  const { hand } = useForm();
  const [asked, setAsked] = useState<string>();
  const work = useWork("padPlan", asked === undefined ? undefined : [open.text, units], { pause: 400 });
  const plan = asked !== undefined && work.value?.ok ? work.value.value : undefined;
  const remedies = answers.good?.assessment.remedies ?? [];
  const amount = ({ value, unit }: Term) => shown(value, unit, units);
  return (
    <>
      {asked === undefined && (
        <p>
          {remedies[0] && `${remedies[0].title}. `}
          <button type="button" className="decide" onClick={() => setAsked("asked")}>
            Find the cheapest pad that holds
          </button>{" "}
          <span className="quiet">It tries every buildable shape, size and depth; some seconds.</span>
        </p>
      )}
      {asked !== undefined && <WorkState work={work} what="Trying designs" />}
      {plan && (
        <section className="finding" aria-label="The pad">
          <p className="finding-said">{plan.best.words}</p>
          <p>
            {amount(plan.best.volumes.order)} to order, {money(plan.best.bill.total, plan.best.bill.currency)}.{" "}
            <span className="quiet">{plan.best.bill.note}</span>
          </p>
          {hand === "writes" && (
            <button type="button" className="decide" onClick={() => open.change("", () => plan.written)}>
              Put this pad into the job
            </button>
          )}
          {plan.best.margins.map((term) => (
            <TermLine key={term.words} term={term} units={units} />
          ))}
          <ul className="checks">
            {plan.best.checks.map((check) => (
              <CheckLine key={`${check.id} ${check.governs}`} check={check} best={undefined} units={units} />
            ))}
          </ul>
          <BarPicture
            title="What the alternatives cost"
            bars={[plan.best, ...plan.others].map(({ words, bill }) => ({
              name: words,
              value: bill.total,
              words: money(bill.total, bill.currency),
            }))}
          />
          {plan.habit && (
            <p>
              <b>By the trade's habit</b> (about 3 ft around each column, 2 in deeper than asked): {plan.habit.words},{" "}
              {amount(plan.habit.volumes.order)}, {money(plan.habit.bill.total, plan.habit.bill.currency)};{" "}
              {plan.habit.verdict === "meets" ? "it meets all that is asked" : `short: ${plan.habit.short.join(" ")}`}.
            </p>
          )}
          <CurvePicture
            title="What more depth buys, with the habit's plan"
            x="depth"
            y="margin"
            printX={(v) => shown(v, plan.depths[0]?.depth.unit ?? "in", units)}
            curves={[
              curve("first crack", "solid", plan.depths, (f) => f.crack),
              curve("collapse", "dashed", plan.depths, (f) => f.collapse),
              curve("anchors", "dotted", plan.depths, (f) => f.anchors),
            ]}
            marks={[{ at: 1, along: "y", words: "what is asked is just met" }]}
          />
          {plan.leftOut.length > 0 && (
            <ul className="quiet">
              {plan.leftOut.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </section>
      )}
      <FormGroup path="" fields={fields} depth={0} only={["pad", "prices"]} />
    </>
  );
};

const money = (amount: number, currency: string): string =>
  `${currency === "$" ? "$" : ""}${Math.round(amount).toLocaleString("en-US")}${currency === "$" ? "" : ` ${currency}`}`;

type Row = NonNullable<
  Extract<ReturnType<typeof useWork<"padPlan">>["value"], { ok: true }>
>["value"]["depths"][number];
type Figures = Exclude<Row["figures"], { readonly unable: true }>;

const curve = (
  name: string,
  pen: "solid" | "dashed" | "dotted",
  rows: readonly Row[],
  of: (figures: Figures) => number,
) => ({
  name,
  pen,
  points: rows.flatMap(({ depth, figures }) => {
    const value = isUnable(figures) ? Number.NaN : of(figures);
    return Number.isFinite(value) ? [[depth.value, Math.min(value, 6)] as const] : [];
  }),
});
