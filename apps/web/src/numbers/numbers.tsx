import type { FactField } from "../work/messages.ts";
import type { OpenFile } from "../work/use-answer.ts";
import { FactInput } from "./fact-input.tsx";

/** What people change while they talk about a floor. */
const openAtFirst = ["Floor", "Strength", "Position"];

/** The numbers of the job that can be typed over, in groups. */
export const Numbers = (props: {
  readonly facts: readonly FactField[];
  readonly file: OpenFile;
  readonly settled: boolean;
  readonly onType: (fact: FactField, written: string) => void;
}) => {
  const typed = new Map(props.file.edits.map(({ path, written }) => [path, written]));
  const groups = [...new Set(props.facts.map(({ group }) => group))];
  return (
    <div className="numbers">
      <p className="quiet">
        Type as you would write it: 4 1/2 in, 5'-6", 3000 psi, 114 mm. Write <b>unknown</b> where nobody knows.
      </p>
      {groups.map((group) => {
        const facts = props.facts.filter((fact) => fact.group === group);
        const open = openAtFirst.includes(group) || facts.some(({ mistake }) => mistake);
        return (
          <details key={group} open={open}>
            <summary>{group}</summary>
            {facts.map((fact) => (
              <FactInput
                key={fact.path}
                fact={fact}
                typed={typed.get(fact.path)}
                settled={props.settled}
                onType={props.onType}
              />
            ))}
          </details>
        );
      })}
      {groups.length === 0 && <p>The file holds no number this page could offer. See the job file.</p>}
    </div>
  );
};
