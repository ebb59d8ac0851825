import type { Candidate } from "@floorworthy/manuals";
import { useState } from "react";
import type { ManualRow } from "./rows.ts";

const sureness = { sure: "read plainly", likely: "likely", doubtful: "doubtful: look twice" } as const;

/** One value: what the manual says, how surely it was read, and a person's word on it. */
export const ManualLine = (props: {
  readonly row: ManualRow;
  readonly label: string;
  /** what stands in the sheet */
  readonly standing: string;
  readonly rejected: ReadonlySet<string>;
  readonly chosen: boolean;
  readonly hand: "writes" | "only-looks";
  readonly onChoose: (candidate?: Candidate) => void;
  readonly onTake: (written: string, candidate: Candidate | undefined) => void;
  readonly onReject: (candidate: Candidate) => void;
}) => {
  const { row, label, standing, rejected, chosen, hand, onChoose, onTake, onReject } = props;
  const [typed, setTyped] = useState<string>();
  const first = row.found[0];
  const refused = first !== undefined && rejected.has(first.id);
  return (
    <li className="manual-row" data-chosen={chosen || undefined}>
      <button type="button" className="manual-row-head" data-field={row.field} onFocus={() => onChoose(first)}>
        <b>{label}</b>{" "}
        {standing !== "" ? (
          <span className="manual-standing">in the sheet: {standing}</span>
        ) : refused ? (
          <span className="quiet">rejected</span>
        ) : first ? (
          <span className="quiet">{first.written}</span>
        ) : (
          <span className="quiet">not found in the manual: ask for it, or type it</span>
        )}
      </button>
      {row.found.map((candidate) => (
        <div key={candidate.id} className="manual-found" data-rejected={rejected.has(candidate.id) || undefined}>
          <p>
            <b>{candidate.written}</b>{" "}
            <span className="quiet">
              page {candidate.evidence.printed ?? candidate.evidence.page}
              {candidate.model && `, ${candidate.model}`}, {sureness[candidate.confidence]}
            </span>
          </p>
          <p>
            <q>{candidate.evidence.line}</q>
          </p>
          {[...candidate.remarks.map(({ message, hint }) => `${message} ${hint}`), ...candidate.reasons].map((line) => (
            <p key={line} className="quiet">
              {line}
            </p>
          ))}
          {candidate.conflicts.length > 0 && (
            <p className="manual-conflict">Another place of the manual says something else.</p>
          )}
          {hand === "writes" && (
            <p className="steps">
              <button type="button" onClick={() => onTake(candidate.written, candidate)}>
                Take it
              </button>
              <button type="button" onClick={() => onReject(candidate)}>
                Reject
              </button>
              <button type="button" onClick={() => onChoose(candidate)}>
                Show its line
              </button>
            </p>
          )}
        </div>
      ))}
      {hand === "writes" && chosen && (
        <form
          className="steps"
          onSubmit={(event) => {
            event.preventDefault();
            const written = (typed ?? first?.written ?? "").trim();
            if (written !== "") onTake(written, first);
            setTyped(undefined);
          }}
        >
          <input
            aria-label={`${label}, in your own words`}
            value={typed ?? ""}
            placeholder={first ? `other than ${first.written}` : "not known"}
            autoComplete="off"
            onChange={({ target }) => setTyped(target.value)}
          />
          <button type="submit">Write it</button>
        </form>
      )}
    </li>
  );
};
