import { isUnable, type Term } from "@floorworthy/engine/quantities";
import { CheckList } from "../../margin/check-list.tsx";
import { TermLine } from "../../margin/term-line.tsx";
import { BarPicture } from "../../pictures/bars.tsx";
import { CurvePicture } from "../../pictures/curve.tsx";
import { inUsualUnit, shown, usualUnit } from "../../quantities/shown.ts";
import { TableWindow } from "../../table-window.tsx";
import type { Value } from "../../work/calls.ts";
import type { Units } from "../../work/messages.ts";

type Plan = Extract<Value<"padPlan">, { ok: true }>["value"];
type Row = Plan["depths"][number];
type Figures = Exclude<Row["figures"], { readonly unable: true }>;

/** The cheapest pad: what it is, what it costs, what holds it, and what it cannot mend. */
export const PadAnswerView = (props: {
  readonly plan: Plan;
  readonly units: Units;
  readonly onTake: (() => void) | undefined;
}) => {
  const { plan, units, onTake } = props;
  const { best, others, habit, depths, leftOut } = plan;
  const amount = ({ value, unit }: Term) => shown(value, unit, units);
  return (
    <section className="finding" aria-label="The pad">
      <p className="finding-said">{best.words}</p>
      <p>
        {amount(best.volumes.order)} to order, {money(best.bill.total, best.bill.currency)}.{" "}
        <span className="quiet">{best.bill.note}</span>
      </p>
      {onTake && (
        <button type="button" className="decide" onClick={onTake}>
          Put this pad into the job
        </button>
      )}
      {(best.short.length > 0 || best.pageFails.length > 0) && (
        <div>
          <h4>What it does not mend</h4>
          <ul>
            {best.short.map((line) => (
              <li key={line}>{line}</li>
            ))}
            {best.pageFails
              .filter(({ title }) => !best.short.some((line) => line.startsWith(title.toLowerCase())))
              .map(({ id, title, asked, found, why }) => (
                <li key={id}>
                  {title}: asked {asked}, found {found}. {why}
                </li>
              ))}
          </ul>
        </div>
      )}
      {best.notes.length > 0 && (
        <ul>
          {best.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {[...best.margins, ...Object.values(best.volumes)].map((term) => (
        <TermLine key={`${term.symbol} ${term.words}`} term={term} units={units} />
      ))}
      <CheckList checks={best.checks} units={units} />
      <BarPicture
        title="What the alternatives cost"
        bars={[best, ...others, ...(habit ? [habit] : [])].map(({ words, bill, verdict, design }, i, all) => ({
          name: `${habit && i === all.length - 1 ? "the trade's habit: " : ""}${words}${design.join === "dowelled" ? " (counts on dowels)" : ""}${verdict === "meets" ? "" : " (falls short)"}`,
          value: bill.total,
          words: money(bill.total, bill.currency),
        }))}
      />
      {others.some(({ design }) => design.join === "dowelled") && (
        <p className="quiet">Proposed is the cheapest that does not count on dowels.</p>
      )}
      <BillTable bill={best.bill} />
      {habit && (
        <p>
          <b>By the trade's habit</b> (about 3 ft around each column, 2 in deeper than asked): {habit.words},{" "}
          {amount(habit.volumes.order)}, {money(habit.bill.total, habit.bill.currency)};{" "}
          {habit.verdict === "meets" ? "it meets all that is asked" : `short: ${habit.short.join(" ")}`}.
        </p>
      )}
      <CurvePicture
        title="What more depth buys, with the habit's plan"
        x={`depth of the pad, ${usualUnit("mm", units)}`}
        y="strength over load"
        curves={[
          curve("first crack", "solid", depths, units, (f) => f.crack),
          curve("collapse", "dashed", depths, units, (f) => f.collapse),
          curve("anchors", "dotted", depths, units, (f) => f.anchors),
        ]}
        marks={[{ at: 1, along: "y", words: "just holds" }]}
      />
      {leftOut.length > 0 && (
        <details className="more">
          <summary>{leftOut.length} kinds were not tried further, and why</summary>
          <ul className="quiet">
            {leftOut.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};

/** What the sum is made of. */
const BillTable = ({ bill }: { bill: Plan["best"]["bill"] }) => (
  <details className="more">
    <summary>What makes {money(bill.total, bill.currency)}</summary>
    <TableWindow name="The bill">
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">How much</th>
          <th scope="col">Price</th>
          <th scope="col">Cost</th>
        </tr>
      </thead>
      <tbody>
        {bill.lines.map((line) => (
          <tr key={line.what}>
            <th scope="row">{line.what}</th>
            <td>{line.amount}</td>
            <td>
              {line.price}
              {line.basis === "invented" && " *"}
            </td>
            <td>{money(line.money, bill.currency)}</td>
          </tr>
        ))}
      </tbody>
    </TableWindow>
    <p className="quiet">* an invented price stands in; write your own quotes under prices.</p>
  </details>
);

const money = (amount: number, currency: string): string =>
  `${currency === "$" ? "$" : ""}${Math.round(amount).toLocaleString("en-US")}${currency === "$" ? "" : ` ${currency}`}`;

/** Beyond this a curve says nothing more. */
const MOST = 6;

const curve = (
  name: string,
  pen: "solid" | "dashed" | "dotted",
  rows: readonly Row[],
  units: Units,
  of: (figures: Figures) => number,
) => ({
  name,
  pen,
  points: rows.flatMap(({ depth, figures }) => {
    const value = isUnable(figures) ? Number.NaN : of(figures);
    return value <= MOST ? [[inUsualUnit(depth.value, depth.unit, units), value] as const] : [];
  }),
});
