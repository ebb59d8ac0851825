import { useEffect, useState } from "react";
import { createDocument, type Heading, listDocuments } from "../api/documents.ts";
import type { Session } from "../api/session.ts";
import { go } from "../route.ts";

const firstLift = `floorworthy: 1
lift:
  name: New lift
  kind: two-post
`;

/** The catalogue: one sheet for each lift, with every edition kept. */
export const LiftsPage = ({ session }: { session: Session }) => {
  const [lifts, setLifts] = useState<readonly Heading[]>();
  const [fault, setFault] = useState<string>();
  useEffect(() => {
    listDocuments("lifts")
      .then(setLifts)
      .catch((error: Error) => setFault(error.message));
  }, []);
  const writes = session.person?.role !== "reader";
  return (
    <main className="jobs-page">
      <header className="page-head">
        <h2>Lifts</h2>
        {writes && (
          <div className="page-hand">
            <button
              type="button"
              className="decide"
              onClick={() =>
                createDocument("lifts", firstLift, "begun")
                  .then(({ id }) => go(`/lifts/${id}`))
                  .catch((error: Error) => setFault(error.message))
              }
            >
              New lift
            </button>
          </div>
        )}
      </header>
      {fault && <p role="alert">{fault}</p>}
      {lifts?.length === 0 && (
        <p>
          There is no lift yet. A lift sheet holds what the maker's floor page asks: thickness, strength, cure, anchors,
          torque. Type it from the manual, line by line.
        </p>
      )}
      <ol className="job-lines">
        {lifts?.map(({ id, title, number, at, by }) => (
          <li key={id} className="job-line">
            <a href={`#/lifts/${encodeURIComponent(id)}`}>
              <span className="job-title">{title}</span>
              <span className="job-kept">
                revision {number}, {at.slice(0, 10)}, {by}
              </span>
            </a>
          </li>
        ))}
      </ol>
    </main>
  );
};
