import { useCallback, useEffect, useState } from "react";
import { Bench } from "./bench.tsx";
import { JobList } from "./jobs/job-list.tsx";
import { useChosenJob } from "./jobs/use-chosen-job.ts";
import { fetchJobText, useDemoJobs, useLiftSheets } from "./jobs/use-demo-jobs.ts";
import { UnitsSwitch } from "./quantities/units-switch.tsx";
import type { Units } from "./work/messages.ts";
import { type OpenFile, useAnswer } from "./work/use-answer.ts";

/** The whole page: jobs to the left, the chosen one beside them. */
export const App = () => {
  const [fault, setFault] = useState<string>();
  const jobs = useDemoJobs(setFault);
  const chosen = useChosenJob(jobs);
  const [file, setFile] = useState<OpenFile>();
  const [units, setUnits] = useState<Units>();
  const answers = useAnswer(file, units, useLiftSheets());

  const open = useCallback((id: string, text: string) => {
    setUnits(undefined);
    setFile({ id, text, edits: [] });
  }, []);
  useEffect(() => {
    if (!chosen) return;
    let current = true;
    fetchJobText(chosen)
      .then((text) => current && open(chosen, text))
      .catch(() => setFault(`The job ${chosen} did not arrive.`));
    return () => {
      current = false;
    };
  }, [chosen, open]);

  const shownUnits = units ?? answers.good?.job.units ?? "inch-pound";
  return (
    <div className="sheet">
      <header className="title">
        <h1>
          Floorworthy <span>will this floor carry the lift?</span>
        </h1>
        <UnitsSwitch units={shownUnits} onChoose={setUnits} />
      </header>
      <JobList jobs={jobs ?? []} chosen={file?.id} onFile={open} />
      <main>
        {fault && <p role="alert">{fault}</p>}
        {jobs?.length === 0 && !file && <p>There are no demo jobs here. Open a job file to begin.</p>}
        {file && <Bench file={file} setFile={setFile} answers={answers} units={shownUnits} />}
      </main>
    </div>
  );
};
