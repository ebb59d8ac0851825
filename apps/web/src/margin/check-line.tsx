import type { MarginCheck } from "@floorworthy/assess";
import { Fold } from "../fold.tsx";
import { shown } from "../quantities/shown.ts";
import type { Units } from "../work/messages.ts";
import { TermLine } from "./term-line.tsx";

/** One check: demand against capacity, with the ratio as a figure and on a rule that ends beyond 1. */
export const CheckLine = ({ check, best, units }: { check: MarginCheck; best: number | undefined; units: Units }) => (
  <li className="check" data-over={check.ratio > 1 ? "over" : "within"}>
    <Fold
      name="check-fold"
      headName="check-head"
      head={
        <>
          <span className="check-title">{check.title}</span>
          <span className="ratio">{ratioWords(check.ratio)}</span>
          <RatioRule ratio={check.ratio} best={best} />
          <span className="check-figures">
            {shown(check.demand.value, check.demand.unit, units)} of{" "}
            {shown(check.capacity.value, check.capacity.unit, units)}
            {check.concrete && `, ${check.concrete}`}
            {check.weight === "advice" && ", advice only"}
            {check.ratio > 1 && <b> over</b>}
          </span>
        </>
      }
    >
      <div className="workings">
        {check.governs && <p className="quiet">Governed by {check.governs}.</p>}
        <p className="clause">{check.clause}</p>
        <TermLine term={check.demand} units={units} />
        <TermLine term={check.capacity} units={units} />
        {best !== undefined && best !== check.ratio && (
          <p className="quiet">At the best end of what is uncertain: {ratioWords(best)}.</p>
        )}
      </div>
    </Fold>
  </li>
);

export const ratioWords = (ratio: number): string => (Number.isFinite(ratio) ? ratio.toFixed(2) : "no capacity");

const end = 1.5;
const place = (ratio: number): number => (Math.min(Number.isFinite(ratio) ? ratio : end, end) / end) * 150;

const RatioRule = ({ ratio, best }: { ratio: number; best: number | undefined }) => (
  <svg className="rule" viewBox="0 0 150 10" preserveAspectRatio="none" aria-hidden="true">
    <rect className="rule-fill" x="0" y="3" width={place(ratio)} height="4" />
    {best !== undefined && best < ratio && <path className="rule-best" d={`M${place(best)} 1v8`} />}
    <path className="rule-line" d="M0 9h150" />
    <path className="rule-one" d="M100 0v10" />
  </svg>
);
