import { useEffect, useState } from "react";
import type { CallName } from "./calls.ts";
import type { Work } from "./use-work.ts";

/** Work that is quicker than this is not spoken of, ms. */
const PATIENCE = 400;

/** What goes on while something is worked out, how far it is, a way to stop it, and why there is no answer. */
export const WorkState = <K extends CallName>({ work, what }: { work: Work<K>; what: string }) => {
  const { state, progress, fault } = work;
  const [long, setLong] = useState<"not-yet" | "long">("not-yet");
  useEffect(() => {
    if (state !== "working") return setLong("not-yet");
    const timer = setTimeout(() => setLong("long"), PATIENCE);
    return () => clearTimeout(timer);
  }, [state]);
  const value = work.value as { readonly ok?: boolean; readonly why?: string } | undefined;
  if (fault) return <p role="alert">{fault}</p>;
  if (state === "stopped")
    return (
      <p className="work-state">
        {what}: stopped.{" "}
        <button type="button" onClick={work.again}>
          Go on
        </button>
      </p>
    );
  if (state === "working")
    return long === "long" ? (
      <p role="status" className="work-state">
        {what} …{" "}
        <progress value={progress?.done} max={progress?.of} aria-label={what}>
          {progress && `${progress.done} of ${progress.of}`}
        </progress>{" "}
        <button type="button" onClick={work.stop}>
          Stop
        </button>
      </p>
    ) : null;
  return value?.ok === false ? <p className="refused">{value.why}</p> : null;
};
