import { useState } from "react";
import { type Heading, readDocument } from "../api/documents.ts";
import { outcomeWords } from "../outcome/outcome-words.ts";
import { shown } from "../quantities/shown.ts";
import type { Units } from "../work/messages.ts";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";

/** Every lift of the catalogue against this floor: both answers, and what the next step would take. */
export const LiftsAsk = (props: {
  readonly text: string;
  readonly units: Units;
  readonly lifts: readonly Heading[];
}) => {
  const { text, units, lifts } = props;
  const [sheets, setSheets] = useState<readonly string[]>();
  const work = useWork("liftsPlan", sheets && [text, units, sheets]);
  const found = sheets && work.value?.ok ? work.value.value : undefined;
  const ask = async () => {
    const read = await Promise.all(lifts.map(({ id }) => readDocument("lifts", id).catch(() => undefined)));
    setSheets(read.flatMap((each) => each?.text ?? []));
  };
  return (
    <details className="group">
      <summary>
        Which lift for this floor <span className="row-doc">every lift of the catalogue, at its full rated load</span>
      </summary>
      {!sheets && (
        <p className="say">
          <button type="button" onClick={ask}>
            Judge all {lifts.length}
          </button>
        </p>
      )}
      {sheets && <WorkState work={work} what="Judging one lift after another" />}
      {found && (
        <section className="finding" aria-label="Lifts for this floor">
          <ul>
            {found.findings.map(({ name, rated, outcome, sentence, next, page, margin }) => (
              <li key={name}>
                <b>{name}</b>
                {rated.known && `, ${shown(rated.value, "N", units)}`}: {outcomeWords[outcome]}. {sentence}{" "}
                <span className="quiet">
                  Page: {page.replaceAll("-", " ")}; margin: {margin.replaceAll("-", " ")}. {next.words}
                </span>
              </li>
            ))}
          </ul>
          {found.notes.map((note) => (
            <p key={note} className="quiet">
              {note}
            </p>
          ))}
        </section>
      )}
    </details>
  );
};
