import { useState } from "react";
import { CheckList } from "../margin/check-list.tsx";
import { TermLine } from "../margin/term-line.tsx";
import { CurvePicture } from "../pictures/curve.tsx";
import { inUsualUnit, usualUnit } from "../quantities/shown.ts";
import type { Units } from "../work/messages.ts";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";

/** May this vehicle go up today? */
export const VehicleAsk = (props: {
  readonly text: string;
  readonly units: Units;
  readonly day: string;
  readonly classes: readonly { readonly key: string; readonly words: string }[];
  readonly vehicles: readonly string[];
}) => {
  const { text, units, day, classes, vehicles } = props;
  const [asked, setAsked] = useState<{ readonly name: string; readonly weight: string }>();
  const work = useWork("vehiclePlan", asked && [text, units, day, asked.name, asked.weight]);
  const answer = asked && work.value?.ok ? work.value.value : undefined;
  return (
    <details className="group">
      <summary>
        This vehicle today <span className="row-doc">may it go up, and which side feels it most</span>
      </summary>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          const form = new FormData(event.currentTarget);
          setAsked({ name: String(form.get("name")), weight: String(form.get("weight") ?? "") });
        }}
      >
        <div className="row">
          <label htmlFor="vehicle-name">Vehicle</label>
          <div className="row-hand">
            <select id="vehicle-name" name="name">
              {vehicles.filter(Boolean).map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
              {classes.map(({ key, words }) => (
                <option key={key} value={key}>
                  {words} (figures typical of the class)
                </option>
              ))}
            </select>
          </div>
        </div>
        <div className="row">
          <label htmlFor="vehicle-weight">
            Weight as lifted
            <span className="row-doc">leave open to take the vehicle's own</span>
          </label>
          <div className="row-hand">
            <input id="vehicle-weight" name="weight" placeholder="such as 8200 lb" autoComplete="off" />
          </div>
        </div>
        <p>
          <button type="submit">May it go up?</button>
        </p>
      </form>
      {asked && <WorkState work={work} what="Weighing it" />}
      {answer && (
        <section className="finding" aria-label="This vehicle">
          <p className="finding-said">{answer.sentence}</p>
          <ul>
            {[...answer.reasons, ...answer.conditions].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {[...answer.place, ...answer.arms].map((term) => (
            <TermLine key={term.words} term={term} units={units} />
          ))}
          <CheckList checks={answer.checks} units={units} />
          {answer.heights.length > 1 && (
            <CurvePicture
              title="Inward moment at the base against carriage height"
              x={`carriage height, ${usualUnit("mm", units)}`}
              y={`inward moment, ${usualUnit("N·mm", units)}`}
              curves={(["left", "right"] as const).map((side, i) => ({
                name: side,
                pen: i === 0 ? ("solid" as const) : ("dashed" as const),
                points: answer.heights
                  .filter(({ pads }) => pads === answer.heights[0]?.pads)
                  .map(
                    (at) =>
                      [inUsualUnit(at.height, "mm", units), inUsualUnit(at[side].inwardMoment, "N·mm", units)] as const,
                  ),
              }))}
            />
          )}
          {answer.assumed.map((line) => (
            <p key={line} className="quiet">
              {line}
            </p>
          ))}
        </section>
      )}
    </details>
  );
};
