import { useCallback, useEffect, useState } from "react";
import { Unreached } from "../api/ask.ts";
import { createDocument, type Heading, listDocuments, takeDemo } from "../api/documents.ts";
import type { Session } from "../api/session.ts";
import { ifAllowed } from "../job/kept-here.ts";
import { go } from "../route.ts";
import { firstJob } from "./first-job.ts";
import { JobLine } from "./job-line.tsx";
import { takeJobFile } from "./take-job-file.ts";

/** All jobs, with what each came to and what is due next. */
export const JobsPage = ({ session }: { session: Session }) => {
  const [jobs, setJobs] = useState<readonly Heading[]>();
  const [fault, setFault] = useState<string>();
  const [shelf, setShelf] = useState<Heading["shelf"]>("open");
  const writes = session.person?.role !== "reader";
  const load = useCallback(() => {
    listDocuments("jobs", shelf)
      .then(setJobs)
      .catch(async (error) => {
        const seen = error instanceof Unreached ? await ifAllowed((db) => db.getAll("seen")) : undefined;
        setJobs(seen?.filter((job) => job.kind === "job" && job.shelf === shelf));
        setFault(seen ? "No connection. These are the jobs this device has seen." : String(error.message));
      });
  }, [shelf]);
  useEffect(load, [load]);
  const tried = <T,>(work: Promise<T>, then: (value: T) => void) =>
    work.then(then).catch((error: Error) => setFault(error.message));
  return (
    <main className="jobs-page">
      <header className="page-head">
        <h2>Jobs</h2>
        {writes && (
          <div className="page-hand">
            <button
              type="button"
              className="decide"
              onClick={() => tried(createDocument("jobs", firstJob(), "begun"), ({ id }) => go(`/jobs/${id}/lift`))}
            >
              New job
            </button>
            <label className="open-file">
              Take in a job file
              <input
                type="file"
                accept=".yaml,.yml,.json,.gz"
                onChange={({ target }) => {
                  const file = target.files?.[0];
                  if (file) tried(takeJobFile(file), (id) => go(`/jobs/${id}`));
                  target.value = "";
                }}
              />
            </label>
          </div>
        )}
      </header>
      {fault && <p role="alert">{fault}</p>}
      {!jobs && !fault && <p role="status">Fetching the jobs …</p>}
      {jobs?.length === 0 && shelf === "open" && (
        <section className="first-use">
          <h3>There is no job yet</h3>
          <p>
            A job is one lift for one floor: the maker's floor page, what is known of the concrete, where the lift is to
            stand. What nobody knows may stay open; the tool says what it would change.
          </p>
          {writes && (
            <p>
              Begin with <b>New job</b>, which takes about two minutes, or look at invented ones first:{" "}
              <button type="button" onClick={() => tried(takeDemo(), load)}>
                Put the demo jobs in
              </button>
            </p>
          )}
        </section>
      )}
      <ol className="job-lines">
        {jobs?.map((job) => (
          <JobLine key={job.id} job={job} />
        ))}
      </ol>
      <p>
        <button type="button" onClick={() => setShelf(shelf === "open" ? "put-away" : "open")}>
          {shelf === "open" ? "Show what was put away" : "Back to the open jobs"}
        </button>
      </p>
    </main>
  );
};
