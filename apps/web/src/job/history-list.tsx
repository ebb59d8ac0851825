import { useEffect, useState } from "react";
import { type Heading, historyOf, type Kind, readDocument } from "../api/documents.ts";
import type { OpenDocument } from "./use-document.ts";

/** Every revision there was. An older one can be taken up again: it becomes the next, and nothing is lost. */
export const HistoryList = ({
  kind,
  open,
  hand,
}: {
  kind: Kind;
  open: OpenDocument;
  hand: "writes" | "only-looks";
}) => {
  const [all, setAll] = useState<readonly Heading[]>([]);
  const [fault, setFault] = useState<string>();
  const { id, base } = open;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision makes the list longer
  useEffect(() => {
    historyOf(kind, id)
      .then(setAll)
      .catch((error: Error) => setFault(error.message));
  }, [kind, id, base.number]);
  const takeUp = (number: number) =>
    readDocument(kind, id, number)
      .then(({ text }) => open.change("", () => text))
      .catch((error: Error) => setFault(error.message));
  return (
    <details className="group">
      <summary>
        History <span className="row-doc">{all.length} revisions; nothing is ever overwritten</span>
      </summary>
      {fault && <p role="alert">{fault}</p>}
      <ol className="files">
        {all.map(({ number, at, by, note }) => (
          <li key={number}>
            <b>{number}</b> {at.slice(0, 16).replace("T", " ")}, {by} <span className="row-doc">{note}</span>{" "}
            {hand === "writes" && number !== base.number && (
              <button type="button" onClick={() => takeUp(number)}>
                Take up revision {number} again
              </button>
            )}
          </li>
        ))}
      </ol>
    </details>
  );
};
