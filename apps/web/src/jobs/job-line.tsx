import { useEffect, useRef, useState } from "react";
import { type Heading, type Revision, readDocument } from "../api/documents.ts";
import { ifAllowed } from "../job/kept-here.ts";
import { today } from "../job/today.ts";
import { outcomeWords } from "../outcome/outcome-words.ts";
import { useWork } from "../work/use-work.ts";

/** One job of the list: what it came to and what is due, worked out when it comes into sight. */
export const JobLine = ({ job }: { job: Heading }) => {
  const line = useRef<HTMLLIElement>(null);
  const [text, setText] = useState<string>();
  useEffect(() => {
    const watcher = new IntersectionObserver(async ([seen]) => {
      if (!seen?.isIntersecting) return;
      watcher.disconnect();
      const kept: Revision | undefined = await ifAllowed((db) => db.get("seen", job.id));
      const read = kept?.number === job.number ? kept : await readDocument("jobs", job.id).catch(() => undefined);
      if (read) await ifAllowed((db) => db.put("seen", read));
      setText(read?.text);
    });
    if (line.current) watcher.observe(line.current);
    return () => watcher.disconnect();
  }, [job]);
  const { value, state } = useWork("summary", text === undefined ? undefined : [text, today()], { pause: 0 });
  return (
    <li ref={line} className="job-line">
      <a href={`#/jobs/${encodeURIComponent(job.id)}`}>
        <span className="job-title">{job.title}</span>
        <span className="job-outcome" data-outcome={value?.outcome}>
          {value ? (value.outcome ? outcomeWords[value.outcome] : "cannot be read yet") : state === "fault" ? "" : "…"}
        </span>
        <span className="job-why">{value?.why}</span>
        <span className="job-due">
          {value?.due ? (
            <>
              <b>{value.due.on}</b> {value.due.what}
            </>
          ) : (
            value && "nothing due"
          )}
        </span>
        <span className="job-kept">
          {job.at.slice(0, 10)}, {job.by}
        </span>
      </a>
    </li>
  );
};
