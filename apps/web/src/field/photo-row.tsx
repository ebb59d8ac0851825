import { useState } from "react";
import type { CardDraft, Snapshot } from "./draft.ts";
import { madeId } from "./made-id.ts";
import { giveUp, hand, useOutbox } from "./outbox.ts";
import type { Step } from "./question.ts";
import { shrink } from "./shrink.ts";

const nameOf = (note: string, id: string): string =>
  `${note.replace(/[^\w]+/g, "-").slice(0, 40)}-${id.slice(0, 8)}.jpg`;

/** Photographs of a step: taken with the camera, made small here, kept on this device until they are sent. */
export const PhotoRow = (props: {
  readonly jobId: string;
  readonly place: string;
  readonly step: Step;
  readonly draft: CardDraft | undefined;
  readonly change: (make: (draft: CardDraft) => CardDraft) => void;
}) => {
  const { jobId, place, step, draft, change } = props;
  const { items } = useOutbox();
  const [said, setSaid] = useState("");
  const there = draft?.photographs[step.id] ?? [];
  const put = (make: (before: readonly Snapshot[]) => readonly Snapshot[]) =>
    change((card) => ({
      ...card,
      photographs: { ...card.photographs, [step.id]: make(card.photographs[step.id] ?? []) },
    }));
  const take = async (file: File) => {
    setSaid("Making it small …");
    const shrunk = await shrink(file);
    if (!shrunk) return setSaid("This picture cannot be read here. Take it with the camera, as JPEG.");
    setSaid("");
    const id = madeId();
    put((before) => [...before, { id, thumb: shrunk.thumb }]);
    await hand({
      kind: "photograph",
      id,
      jobId,
      made: new Date().toISOString(),
      words: `photograph, ${step.note}`,
      place,
      fate: { state: "waits" },
      file: shrunk.file,
      name: nameOf(step.note, id),
      note: step.note,
    });
  };
  return (
    <div className="ask photographs">
      <label className="open-file">
        Photograph
        <input
          type="file"
          accept="image/*"
          capture="environment"
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file) take(file);
            target.value = "";
          }}
        />
      </label>
      {there.map(({ id, thumb }, i) => {
        const item = items.find((each) => each.id === id);
        return (
          <figure key={id}>
            <img src={thumb} alt={`${step.note}, photograph ${i + 1}`} />
            <figcaption>
              {!item ? (
                "sent"
              ) : (
                <button
                  type="button"
                  aria-label={`Give up photograph ${i + 1} of ${step.note}`}
                  onClick={() => {
                    giveUp(item);
                    put((before) => before.filter((each) => each.id !== id));
                  }}
                >
                  give up
                </button>
              )}
            </figcaption>
          </figure>
        );
      })}
      <p className="ask-said" role="status">
        {said}
      </p>
    </div>
  );
};
