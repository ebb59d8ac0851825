import type { Assessment, MissingFact } from "@floorworthy/assess";
import { outcomeWords } from "./outcome-words.ts";

/** What to find out, in the order of cost: the set that settles the outcome first, then what would not change it. */
export const OpenQuestions = ({ assessment: { missing, settling } }: { assessment: Assessment }) => {
  if (missing.length === 0) return null;
  const settles = missing.filter(({ id }) => settling?.facts.includes(id));
  const turns = missing.filter((fact) => !settles.includes(fact) && fact.flips === "flips");
  const keeps = missing.filter((fact) => !settles.includes(fact) && fact.flips !== "flips");
  return (
    <div className="open-questions">
      <h3>What to find out next</h3>
      {settling && <p>{settling.sentence}</p>}
      {settles.length > 0 && (
        <ol className="questions">
          {settles.map((fact) => (
            <Question key={fact.id} fact={fact} />
          ))}
        </ol>
      )}
      {turns.length > 0 && (
        <ul>
          {turns.map((fact) => (
            <Question key={fact.id} fact={fact} />
          ))}
        </ul>
      )}
      {keeps.length > 0 && (
        <details className="more">
          <summary>
            {keeps.length === 1
              ? "1 more is open and changes nothing"
              : `${keeps.length} more are open and change nothing`}
          </summary>
          <ul>
            {keeps.map((fact) => (
              <Question key={fact.id} fact={fact} />
            ))}
          </ul>
        </details>
      )}
    </div>
  );
};

const Question = ({ fact: { what, how, cost, worst, best, flips } }: { fact: MissingFact }) => (
  <li>
    <b>{what}</b>: {how} ({cost}).{" "}
    {flips === "flips" && (
      <span className="quiet">
        At its worst: {outcomeWords[worst].toLowerCase()}; at its best: {outcomeWords[best].toLowerCase()}.
      </span>
    )}
  </li>
);
