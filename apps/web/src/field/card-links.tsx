import { useEffect, useState } from "react";
import { ifAllowed } from "../job/kept-here.ts";
import { cards } from "./cards.ts";
import { type CardDraft, draftId, isDone, stepState } from "./draft.ts";

/** The cards of a job, and how far they are on this device. */
export const CardLinks = ({ jobId }: { jobId: string }) => {
  const [drafts, setDrafts] = useState<readonly CardDraft[]>([]);
  useEffect(() => {
    ifAllowed((db) => db.getAll("cards")).then((all) => setDrafts(all ?? []));
  }, []);
  return (
    <nav className="card-links" aria-label="Field cards">
      <span>Cards:</span>
      {cards.map(({ id, title }) => {
        const draft = drafts.find((each) => each.id === draftId(jobId, id));
        const said = draft?.steps.filter((step) => stepState(draft, step) !== "open").length ?? 0;
        return (
          <a key={id} href={`#/jobs/${encodeURIComponent(jobId)}/cards/${id}`}>
            {title.replace(" card", "")}
            {draft && said > 0 && !isDone(draft) && (
              <small>
                begun, {said} of {draft.steps.length}
              </small>
            )}
          </a>
        );
      })}
    </nav>
  );
};
