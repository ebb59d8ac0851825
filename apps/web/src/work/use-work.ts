import { useEffect, useRef, useState } from "react";
import type { Args, CallName, Value } from "./calls.ts";
import { desks } from "./desk.ts";

export interface Work<K extends CallName> {
  readonly state: "waiting" | "working" | "done" | "fault";
  /** the last value; while newer work goes on it belongs to an older question */
  readonly value: Value<K> | undefined;
  readonly progress: { readonly done: number; readonly of: number } | undefined;
  readonly fault: string | undefined;
}

/**
 * Work done beside the page. Asked anew whenever its arguments change (compared as JSON), taken back when the part of the
 * page that asked goes away.
 * @param args undefined: nothing to ask yet
 */
export const useWork = <K extends CallName>(
  call: K,
  args: Args<K> | undefined,
  { desk = "side", pause = 150 }: { readonly desk?: keyof typeof desks; readonly pause?: number } = {},
): Work<K> => {
  const [work, setWork] = useState<Work<K>>({
    state: "waiting",
    value: undefined,
    progress: undefined,
    fault: undefined,
  });
  const key = args === undefined ? undefined : JSON.stringify(args);
  const asked = useRef(args);
  asked.current = args;
  useEffect(() => {
    if (key === undefined) return;
    setWork((before) => ({ ...before, state: "working", progress: undefined, fault: undefined }));
    let takeBack = () => {};
    const timer = setTimeout(() => {
      takeBack = desks[desk].ask(call, asked.current as Args<K>, (reply) => {
        if (reply.kind === "progress") setWork((before) => ({ ...before, progress: reply }));
        else if (reply.kind === "value")
          setWork({ state: "done", value: reply.value, progress: undefined, fault: undefined });
        else setWork((before) => ({ ...before, state: "fault", progress: undefined, fault: reply.words }));
      });
    }, pause);
    return () => {
      clearTimeout(timer);
      takeBack();
    };
  }, [call, key, desk, pause]);
  return work;
};
