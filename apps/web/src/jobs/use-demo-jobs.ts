import { useEffect, useState } from "react";

/** A demo job as the server lists it. */
export interface DemoJob {
  readonly id: string;
  readonly title: string;
  readonly note: string;
}

/** The demo jobs; undefined until they are here. */
export const useDemoJobs = (onFault: (words: string) => void): readonly DemoJob[] | undefined => {
  const [jobs, setJobs] = useState<readonly DemoJob[]>();
  useEffect(() => {
    fetch("/api/examples")
      .then((reply) => reply.json())
      .then(setJobs)
      .catch(() => onFault("The list of jobs did not arrive. Is the server still running?"));
  }, [onFault]);
  return jobs;
};

export const fetchJobText = async (id: string): Promise<string> => {
  const reply = await fetch(`/api/examples/${encodeURIComponent(id)}`);
  if (!reply.ok) throw new Error("no such job");
  return reply.text();
};

const none = {};

/** Lift sheets kept in files of their own, by name, for the jobs that refer to them. */
export const useLiftSheets = (): Readonly<Record<string, string>> => {
  const [sheets, setSheets] = useState<Readonly<Record<string, string>>>(none);
  useEffect(() => {
    fetch("/api/sheets")
      .then((reply) => reply.json())
      .then((found: Readonly<Record<string, string>>) => Object.keys(found).length > 0 && setSheets(found))
      .catch(() => undefined); // a job that refers to one says so itself
  }, []);
  return sheets;
};
