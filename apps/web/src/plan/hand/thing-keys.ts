import type { Point } from "@floorworthy/engine/geometry";
import type { Units } from "../../work/messages.ts";

/** What a key asks of the thing in focus. */
export type Asked =
  | { readonly do: "choose" | "leave" | "turn" | "remove" | "nearer" | "farther" | "whole" }
  | { readonly do: "move"; readonly by: Point };

const ways: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const words: Readonly<Record<string, Exclude<Asked["do"], "move">>> = {
  Enter: "choose",
  " ": "choose",
  Escape: "leave",
  t: "turn",
  Delete: "remove",
  "+": "nearer",
  "=": "nearer",
  "-": "farther",
  "0": "whole",
};

/** An inch, with Shift a foot; a centimetre, with Shift a decimetre. */
export const askedBy = (event: { readonly key: string; readonly shiftKey: boolean }, units: Units) => {
  const way = ways[event.key];
  if (way) {
    const step = (units === "si" ? 10 : 25.4) * (event.shiftKey ? (units === "si" ? 10 : 12) : 1);
    return { do: "move", by: { x: way.x * step, y: way.y * step } } as const;
  }
  const word = words[event.key.length === 1 ? event.key.toLowerCase() : event.key];
  return word && ({ do: word } as Asked);
};
