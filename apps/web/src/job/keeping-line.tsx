import type { OpenDocument } from "./use-document.ts";

const words = {
  kept: "Kept.",
  changed: "Changed …",
  keeping: "Keeping …",
  unreached: "No connection. What you typed is kept on this device and sent when it is back.",
} as const;

/** How what is typed stands to what is kept, with a step back and forth. */
export const KeepingLine = ({ open, hand }: { open: OpenDocument; hand: "writes" | "only-looks" }) => {
  const { keeping, base, undo, redo, joined } = open;
  const said =
    keeping.state === "refused"
      ? keeping.words
      : keeping.state === "clash"
        ? "Two versions clash."
        : words[keeping.state];
  return (
    <div className="keeping">
      <p role="status" data-keeping={keeping.state}>
        {hand === "only-looks" ? "You may look, not write." : said}{" "}
        <span className="quiet">
          Revision {base.number}, {base.by}.{joined && ` ${joined}'s changes came in with yours.`}
        </span>
      </p>
      {hand === "writes" && (
        <div className="steps">
          <button type="button" disabled={!undo} onClick={undo}>
            Undo
          </button>
          <button type="button" disabled={!redo} onClick={redo}>
            Redo
          </button>
        </div>
      )}
    </div>
  );
};

/** Two people wrote the same place differently: one of them says which goes on. Nothing is lost either way. */
export const ClashNotice = ({ open }: { open: OpenDocument }) => {
  const { keeping } = open;
  if (keeping.state !== "clash") return null;
  const { head, paths } = keeping;
  return (
    <section className="clash" role="alert">
      <p>
        {head.by} has written revision {head.number} meanwhile, and differently at{" "}
        {paths.filter(Boolean).join(", ") || "the same place"}.
      </p>
      <button type="button" onClick={() => open.settle("mine")}>
        Mine goes on there; theirs stays in the history
      </button>
      <button type="button" onClick={() => open.settle("theirs")}>
        Theirs goes on there; mine is given up
      </button>
    </section>
  );
};
