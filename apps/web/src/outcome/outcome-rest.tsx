import type { Assessment } from "@floorworthy/assess";
import { TermLine } from "../margin/term-line.tsx";
import type { Units } from "../work/messages.ts";

/** Everything that goes with the outcome: further reasons, stops, conditions, remedies, facts still missing. */
export const OutcomeRest = ({ assessment, units }: { assessment: Assessment; units: Units }) => {
  const { reasons, stops, conditions, remedies, margin } = assessment;
  return (
    <section className="rest" aria-labelledby="rest-title">
      <h2 id="rest-title">What goes with it</h2>
      <div className="rest-columns">
        <Said title="All the reasons" lines={reasons} />
        {stops.length > 0 && (
          <div>
            <h3>Where the arithmetic stops</h3>
            <ul>
              {stops.map(({ id, reason, next }) => (
                <li key={id}>
                  {reason} <span className="quiet">{next}</span>
                </li>
              ))}
            </ul>
          </div>
        )}
        <Said title="Conditions" lines={conditions} />
        {margin.lean.length > 0 && (
          <div>
            <h3>How far the columns lean</h3>
            {margin.lean.map((term) => (
              <TermLine key={term.words} term={term} units={units} />
            ))}
          </div>
        )}
        {remedies.map(({ id, title, detail, volume, terms }) => (
          <div key={id}>
            <h3>{title}</h3>
            <p>{detail}</p>
            {[...(volume ? [volume] : []), ...terms].map((term, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: terms have no other name and never change places
              <TermLine key={i} term={term} units={units} />
            ))}
          </div>
        ))}
      </div>
    </section>
  );
};

const Said = ({ title, lines }: { title: string; lines: readonly string[] }) =>
  lines.length > 0 && (
    <div>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
