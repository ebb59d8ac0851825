import { useCallback, useEffect, useRef, useState } from "react";
import type { Args, CallName, Value } from "./calls.ts";
import { desks } from "./desk.ts";

export interface Work<K extends CallName> {
  readonly state: "waiting" | "working" | "done" | "fault" | "stopped";
  /** the last value; while newer work goes on it belongs to an older question */
  readonly value: Value<K> | undefined;
  readonly progress: { readonly done: number; readonly of: number } | undefined;
  readonly fault: string | undefined;
  /** gives the work up, at once */
  readonly stop: () => void;
  readonly again: () => void;
}

type Standing<K extends CallName> = Pick<Work<K>, "state" | "value" | "progress" | "fault">;

/**
 * Work done beside the page. Asked anew whenever its arguments change (compared as JSON), taken back when the part of the
 * page that asked goes away.
 * @param args undefined: nothing to ask
 */
export const useWork = <K extends CallName>(
  call: K,
  args: Args<K> | undefined,
  { desk = "side", pause = 150 }: { readonly desk?: keyof typeof desks; readonly pause?: number } = {},
): Work<K> => {
  const [work, setWork] = useState<Standing<K>>(nothing);
  const [round, setRound] = useState(0);
  const key = args === undefined ? undefined : `${round} ${JSON.stringify(args)}`;
  const asked = useRef(args);
  asked.current = args;
  const giveUp = useRef(() => {});
  const asks = useRef(0);
  useEffect(() => {
    if (key === undefined) return setWork((before) => (before.state === "waiting" ? before : nothing));
    setWork((before) => ({ ...before, state: "working", progress: undefined, fault: undefined }));
    // the first question is asked at once; later ones wait for the typing to pause
    asks.current += 1;
    const wait = asks.current === 1 ? 0 : pause;
    let takeBack: ReturnType<(typeof desks)[typeof desk]["ask"]> = () => {};
    const timer = setTimeout(() => {
      takeBack = desks[desk].ask(call, asked.current as Args<K>, (reply) => {
        if (reply.kind === "progress") setWork((before) => ({ ...before, progress: reply }));
        else if (reply.kind === "value")
          setWork({ state: "done", value: reply.value, progress: undefined, fault: undefined });
        else setWork((before) => ({ ...before, state: "fault", progress: undefined, fault: reply.words }));
      });
    }, wait);
    const leave = (when: "now" | "soon") => {
      clearTimeout(timer);
      takeBack(when);
    };
    giveUp.current = () => leave("now");
    return () => leave("soon");
  }, [call, key, desk, pause]);
  const stop = useCallback(() => {
    giveUp.current();
    setWork((before) => ({ ...before, state: "stopped", progress: undefined }));
  }, []);
  const again = useCallback(() => setRound((before) => before + 1), []);
  return { ...work, stop, again };
};

const nothing = { state: "waiting", value: undefined, progress: undefined, fault: undefined } as const;
