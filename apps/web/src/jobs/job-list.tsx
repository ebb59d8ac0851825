import { useEffect, useRef } from "react";
import type { DemoJob } from "./use-demo-jobs.ts";

/** The jobs at hand; the chosen one is marked. */
export const JobList = (props: {
  readonly jobs: readonly DemoJob[];
  readonly chosen: string | undefined;
  readonly onFile: (name: string, text: string) => void;
}) => {
  const list = useRef<HTMLOListElement>(null);
  const { chosen } = props;
  useEffect(() => {
    const entry = chosen && list.current?.querySelector<HTMLElement>("[aria-current]")?.parentElement;
    if (entry) list.current?.scrollTo({ left: entry.offsetLeft - list.current.offsetLeft });
  }, [chosen]);
  return (
    <nav className="jobs" aria-label="Jobs">
      <h2>Jobs</h2>
      <ol ref={list}>
        {props.jobs.map(({ id, title, note }) => (
          <li key={id}>
            <a href={`#${id}`} aria-current={id === chosen ? "page" : undefined}>
              <span className="job-title">{title}</span>
              {note && <span className="job-note">{note}</span>}
            </a>
          </li>
        ))}
      </ol>
      <label className="open-file">
        Open a job file
        <input
          type="file"
          accept=".yaml,.yml,.json"
          onChange={async ({ target }) => {
            const file = target.files?.[0];
            if (file) props.onFile(file.name, await file.text());
            target.value = "";
          }}
        />
      </label>
    </nav>
  );
};
