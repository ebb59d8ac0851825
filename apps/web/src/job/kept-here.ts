import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Revision } from "../api/documents.ts";
import type { CardDraft } from "../field/draft.ts";
import type { WaitingEntry, WaitingPhotograph } from "../field/waiting.ts";

/** What this device keeps, so that work goes on without a signal and nothing typed is lost. */
interface Kept extends DBSchema {
  /** the last revision seen of each document */
  seen: { key: string; value: Revision };
  /** typed but not yet taken by the server */
  drafts: { key: string; value: { readonly id: string; readonly base: Revision; readonly text: string } };
  /** field entries to be sent */
  outbox: { key: string; value: WaitingEntry };
  /** photographs to be sent */
  photographs: { key: string; value: WaitingPhotograph };
  /** field cards in hand */
  cards: { key: string; value: CardDraft };
}

let opened: Promise<IDBPDatabase<Kept>> | undefined;

/** The device's own store; it may be forbidden (a private window), then nothing is kept and nothing breaks. */
export const keptHere = (): Promise<IDBPDatabase<Kept>> => {
  opened ??= openDB<Kept>("floorworthy", 2, {
    upgrade: (db) => {
      for (const name of ["seen", "drafts", "outbox", "photographs", "cards"] as const)
        if (!db.objectStoreNames.contains(name)) db.createObjectStore(name, { keyPath: "id" });
    },
    // a newer page in another window must not wait for this one
    blocking: (_old, _new, { target }) => {
      (target as IDBDatabase).close();
      opened = undefined;
    },
  });
  return opened;
};

/** Does it where the device allows it. */
export const ifAllowed = <T>(work: (db: IDBPDatabase<Kept>) => Promise<T>): Promise<T | undefined> =>
  keptHere()
    .then(work)
    .catch(() => undefined);
