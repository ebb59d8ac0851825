import { mergeTexts } from "@floorworthy/job/editing";

/** The texts one after the other, for steps back and forth. */
export interface Steps {
  readonly texts: readonly string[];
  /** of which change each came; the same non-empty words in a row are one step */
  readonly words: readonly string[];
  readonly at: number;
}

const MOST = 200;
/** How far back somebody else's changes are brought into; older steps are given up. */
const FAR = 30;

export const firstStep = (text: string): Steps => ({ texts: [text], words: [""], at: 0 });

/** One change more; what had been undone is gone. */
export const stepOn = (steps: Steps, words: string, make: (text: string) => string): Steps => {
  const { texts, words: said, at } = steps;
  const before = texts[at];
  const after = before === undefined ? undefined : make(before);
  if (after === undefined || after === before) return steps;
  const from = said[at] === words && words !== "" ? at : at + 1;
  const first = Math.max(0, from - MOST);
  return { texts: [...texts.slice(first, from), after], words: [...said.slice(first, from), words], at: from - first };
};

/**
 * Somebody else's changes, from `base` to `theirs`, come into every step, so that a step back never takes them away.
 * @param now the present text, with theirs already in it
 */
export const withTheirs = ({ texts, words, at }: Steps, base: string, theirs: string, now: string): Steps => {
  const first = Math.max(0, at - FAR);
  const brought = texts.slice(first, at + FAR + 1).map((text, i) => {
    if (first + i === at) return now;
    const merged = mergeTexts(base, text, theirs, "theirs");
    return merged.ok ? merged.text : now;
  });
  return { texts: brought, words: words.slice(first, at + FAR + 1), at: at - first };
};
