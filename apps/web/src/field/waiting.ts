import type { EntryBody } from "./entries.ts";

/**
 * Something this device has to send. `sent`: taken as that revision; it stays until this device has seen it.
 */
export type Fate =
  | { readonly state: "waits" }
  | { readonly state: "refused"; readonly why: string }
  | { readonly state: "sent"; readonly revision: number };

interface Item {
  /** made here, so that it can be sent twice and is taken once */
  readonly id: string;
  readonly jobId: string;
  /** instant, ISO */
  readonly made: string;
  /** for the person: "R4: 45 lb-ft" */
  readonly words: string;
  readonly fate: Fate;
  /** where it can be corrected: `drill/hole-2` */
  readonly place: string;
}
export interface WaitingEntry extends Item {
  readonly kind: "entry";
  readonly body: EntryBody;
}
export interface WaitingPhotograph extends Item {
  readonly kind: "photograph";
  readonly file: Blob;
  readonly name: string;
  readonly note: string;
}
export type Waiting = WaitingEntry | WaitingPhotograph;

export type Reply =
  | { readonly kind: "taken"; readonly revision: number | undefined }
  /** for good: it is kept, and can be corrected or given up */
  | { readonly kind: "refused"; readonly why: string }
  /** later */
  | { readonly kind: "not-now"; readonly why: string };

/**
 * Sends what waits, oldest first, one after the other. What is refused is marked and the next one goes; when nobody answers
 * the rest waits.
 * @returns why it stopped; undefined when it came through
 */
export const sendInOrder = async (
  items: readonly Waiting[],
  post: (item: Waiting) => Promise<Reply>,
  settle: (item: Waiting, fate: Fate | "gone") => Promise<void>,
): Promise<string | undefined> => {
  const queue = items.filter(({ fate }) => fate.state === "waits").toSorted(byAge);
  for (const item of queue) {
    const reply = await post(item);
    if (reply.kind === "not-now") return reply.why;
    if (reply.kind === "refused") await settle(item, { state: "refused", why: reply.why });
    else await settle(item, reply.revision === undefined ? "gone" : { state: "sent", revision: reply.revision });
  }
  return undefined;
};

export const byAge = (a: Waiting, b: Waiting): number => (a.made < b.made ? -1 : a.made > b.made ? 1 : 0);

/** Entries this job's text on this device does not hold yet, oldest first; those refused are not counted in. */
export const notSeen = (items: readonly Waiting[], jobId: string, seen: number): readonly WaitingEntry[] =>
  items
    .filter(
      (item): item is WaitingEntry =>
        item.kind === "entry" &&
        item.jobId === jobId &&
        (item.fate.state === "waits" || (item.fate.state === "sent" && item.fate.revision > seen)),
    )
    .toSorted(byAge);

/** How many wait and how many were refused, for the line at the top. */
export const countsOf = (items: readonly Waiting[]) => ({
  entries: items.filter(({ kind, fate }) => kind === "entry" && fate.state === "waits").length,
  photographs: items.filter(({ kind, fate }) => kind === "photograph" && fate.state === "waits").length,
  refused: items.filter(({ fate }) => fate.state === "refused"),
});
