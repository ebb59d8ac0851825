import { useSyncExternalStore } from "react";
import { ifAllowed } from "../job/kept-here.ts";
import { post } from "./post.ts";
import { type Fate, sendInOrder, type Waiting } from "./waiting.ts";

/** What this device has to send: in its own store, and here while the page is open. */
export interface Outbox {
  readonly items: readonly Waiting[];
  readonly sending: "at-rest" | "sending";
  /** why the last try stopped */
  readonly why: string | undefined;
}

let outbox: Outbox = { items: [], sending: "at-rest", why: undefined };
const watchers = new Set<() => void>();
const others = "BroadcastChannel" in globalThis ? new BroadcastChannel("floorworthy-outbox") : undefined;

const set = (next: Partial<Outbox>): void => {
  outbox = { ...outbox, ...next };
  for (const changed of watchers) changed();
};

const watch = (changed: () => void) => {
  watchers.add(changed);
  return () => watchers.delete(changed);
};

export const useOutbox = (): Outbox => useSyncExternalStore(watch, () => outbox);
export const waitingNow = (): readonly Waiting[] => outbox.items;

/** Reads the device's store; what another window put there is found. */
const load = async (): Promise<void> => {
  const kept = await ifAllowed(async (db) => [...(await db.getAll("outbox")), ...(await db.getAll("photographs"))]);
  if (kept) set({ items: kept });
};

const storeOf = ({ kind }: Waiting) => (kind === "entry" ? "outbox" : "photographs");

const change = (id: string, to: Waiting | undefined): void => {
  const rest = outbox.items.filter((item) => item.id !== id);
  set({ items: to ? [...rest, to] : rest });
  others?.postMessage("changed");
};

/** Keeps it on the device and sends it as soon as there is a connection. */
export const hand = async (item: Waiting): Promise<void> => {
  change(item.id, item);
  // asks the browser not to clear it when room gets short
  navigator.storage?.persist?.().catch(() => undefined);
  await ifAllowed((db) => (item.kind === "entry" ? db.put("outbox", item) : db.put("photographs", item)));
  sendNow();
};

export const giveUp = async (item: Waiting): Promise<void> => {
  await ifAllowed((db) => db.delete(storeOf(item), item.id));
  change(item.id, undefined);
};

const settle = async (item: Waiting, fate: Fate | "gone"): Promise<void> => {
  if (fate === "gone") return giveUp(item);
  const next: Waiting = { ...item, fate };
  await ifAllowed((db) => (next.kind === "entry" ? db.put("outbox", next) : db.put("photographs", next)));
  change(item.id, next);
};

/** What was sent and is in the text this device has seen need not be kept. */
export const seenUpTo = async (jobId: string, revision: number): Promise<void> => {
  for (const item of outbox.items)
    if (item.jobId === jobId && item.fate.state === "sent" && item.fate.revision <= revision) await giveUp(item);
};

/** One window at a time; where the browser cannot say, both send, and the server takes each thing once. */
const alone = (work: () => Promise<void>): Promise<void> =>
  "locks" in navigator
    ? navigator.locks.request("floorworthy-outbox", { ifAvailable: true }, async (lock) => {
        if (lock) await work();
      })
    : work();

export const sendNow = async (): Promise<void> => {
  if (outbox.sending === "sending" || !outbox.items.some(({ fate }) => fate.state === "waits")) return;
  set({ sending: "sending" });
  try {
    await alone(async () => {
      // what came in while it was sending goes too
      let why: string | undefined;
      do why = await sendInOrder(outbox.items, post, settle);
      while (why === undefined && outbox.items.some(({ fate }) => fate.state === "waits"));
      set({ why });
    });
  } finally {
    set({ sending: "at-rest" });
  }
};

const AGAIN = 20_000;

/** From the start of the page on: sends when the connection is back, at once, and every so often while something waits. */
export const keepSending = (): void => {
  load().then(sendNow);
  globalThis.addEventListener("online", () => sendNow());
  others?.addEventListener("message", () => load());
  setInterval(() => sendNow(), AGAIN);
};
