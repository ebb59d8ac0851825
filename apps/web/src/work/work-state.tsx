import type { CallName } from "./calls.ts";
import type { Work } from "./use-work.ts";

/** What goes on while something is worked out, and why there is no answer. */
export const WorkState = <K extends CallName>({ work, what }: { work: Work<K>; what: string }) => {
  const { state, progress, fault } = work;
  const value = work.value as { readonly ok?: boolean; readonly why?: string } | undefined;
  if (fault) return <p role="alert">{fault}</p>;
  if (state === "working")
    return (
      <p role="status" className="quiet">
        {what} …{" "}
        {progress && (
          <progress value={progress.done} max={progress.of} aria-label={what}>
            {progress.done} of {progress.of}
          </progress>
        )}
      </p>
    );
  return value?.ok === false ? <p className="refused">{value.why}</p> : null;
};
