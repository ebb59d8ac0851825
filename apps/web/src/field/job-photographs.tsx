import { useEffect, useState } from "react";
import { ask } from "../api/ask.ts";
import { useOutbox } from "./outbox.ts";

interface Attachment {
  readonly hash: string;
  readonly name: string;
  readonly mime: string;
  readonly note: string;
  readonly by: string;
  readonly at: string;
}

const pictures = ["image/jpeg", "image/png", "image/webp"];

/** Photographs and papers of the job, newest first. */
export const JobPhotographs = ({ jobId }: { jobId: string }) => {
  const { items } = useOutbox();
  const waiting = items.filter((item) => item.jobId === jobId && item.kind === "photograph").length;
  const [files, setFiles] = useState<readonly Attachment[]>();
  const [said, setSaid] = useState("Fetching the photographs …");
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked up again when one more was sent
  useEffect(() => {
    ask<readonly Attachment[]>("GET", `/api/jobs/${encodeURIComponent(jobId)}/attachments`)
      .then((all) => setFiles(all.toReversed()))
      .catch((error: Error) => setSaid(error.message));
  }, [jobId, waiting]);
  if (!files) return <p role="status">{said}</p>;
  if (files.length === 0)
    return <p className="quiet">No photograph yet. They come from the field cards, each with the name of its hole.</p>;
  return (
    <ul className="attachments">
      {files.map(({ hash, name, mime, note, by, at }) => (
        <li key={`${hash} ${name}`}>
          <a href={`/api/attachments/${hash}`} target="_blank" rel="noreferrer">
            {pictures.includes(mime) ? (
              <img src={`/api/attachments/${hash}`} alt={note || name} loading="lazy" />
            ) : (
              <span>{name}</span>
            )}
          </a>
          <p>
            {note || name}
            <span className="quiet">
              {by}, {at.slice(0, 16).replace("T", " ")}
            </span>
          </p>
        </li>
      ))}
    </ul>
  );
};
