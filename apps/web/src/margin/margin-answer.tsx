import type { Assessment } from "@floorworthy/assess";
import { marginWords } from "../outcome/outcome-words.ts";
import type { Units } from "../work/messages.ts";
import { CheckGroup } from "./check-group.tsx";
import { LoadCases } from "./load-cases.tsx";

/** The second answer: what mechanics and the published codes say. Advice; it never decides for the first. */
export const MarginAnswer = ({ margin, units }: { margin: Assessment["margin"]; units: Units }) => {
  const best = new Map(margin.best.map(({ id, ratio }) => [id, ratio]));
  const groups = [...new Set(margin.checks.map(({ group }) => group))];
  return (
    <section className="answer" aria-labelledby="margin-title">
      <header>
        <h2 id="margin-title">The margin</h2>
        <p className="verdict">{marginWords[margin.verdict]}</p>
        <p className="quiet">What mechanics and the published codes say. This advises.</p>
      </header>
      <p className="margin-sentence">{margin.sentence}</p>
      {groups.map((group) => (
        <CheckGroup
          key={group}
          title={group}
          show="worst"
          checks={margin.checks.filter((c) => c.group === group)}
          best={best}
          units={units}
        />
      ))}
      {margin.information.length > 0 && (
        <CheckGroup
          title="Printed beside, not counted"
          show="folded"
          checks={margin.information}
          best={best}
          units={units}
        />
      )}
      {margin.unable.length > 0 && (
        <div className="check-group">
          <h3>Not worked out</h3>
          <ul>
            {margin.unable.map(({ place, reason }) => (
              <li key={place + reason}>
                <b>{place}</b>: {reason}
              </li>
            ))}
          </ul>
        </div>
      )}
      {margin.cases.length > 0 && <LoadCases cases={margin.cases} units={units} />}
    </section>
  );
};
