import type { Term } from "@floorworthy/engine/quantities";
import { Fold } from "../fold.tsx";
import { printed, shown, unitFor } from "../quantities/shown.ts";
import { MathSymbol } from "../quantities/symbol.tsx";
import type { Units } from "../work/messages.ts";

/** A number that unfolds down to what it was made of. */
export const TermLine = ({ term, units }: { term: Term; units: Units }) => {
  const { symbol, words, formula, worked, clause, basis, from = [] } = term;
  const head = (
    <>
      <MathSymbol written={symbol} />
      <span className="term-words">{words}</span>
      <output>{shown(term.value, term.unit, units)}</output>
    </>
  );
  if (!formula && !worked && !clause && !basis && from.length === 0) return <p className="term flat">{head}</p>;
  return (
    <Fold name="term" headName="term-head" head={head}>
      <div className="term-inside">
        {(formula || worked) && (
          <p className="formula">
            <MathSymbol written={symbol} /> {formula && `= ${formula}`} {worked && <span>= {worked}</span>}{" "}
            <span>= {printed(term.value, term.unit)}</span>
            {unitFor(term.unit, units) !== term.unit && <span> = {shown(term.value, term.unit, units)}</span>}
          </p>
        )}
        {(clause || basis) && (
          <p className="clause">
            {clause} {basis && <span>Known by: {basis}</span>}
          </p>
        )}
        {from.map((inner, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a formula never change places
          <TermLine key={i} term={inner} units={units} />
        ))}
      </div>
    </Fold>
  );
};
