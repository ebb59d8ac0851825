import type { Rect } from "@floorworthy/engine/geometry";
import type { Note } from "./note.ts";
import { setNotes } from "./set-notes.ts";

/** Notes at the largest size that fits, with the columns ending about level instead of the last one nearly empty. */
export const evenNotes = (notes: readonly Note[], columns: readonly Rect[], largest: number) => {
  let best = setNotes(notes, columns, largest);
  if (!best) return undefined;
  const { size } = best;
  for (let share = 0.96; share > 0.3; share -= 0.04) {
    const shorter = columns.map((c) => ({ ...c, y1: c.y0 + (c.y1 - c.y0) * share }));
    const tried = setNotes(notes, shorter, size);
    if (!tried || tried.size < size - 1e-9) break;
    best = tried;
  }
  return best;
};
