import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Revision } from "../api/documents.ts";

/** What this device keeps, so that work goes on without a signal and nothing typed is lost. */
interface Kept extends DBSchema {
  /** the last revision seen of each document */
  seen: { key: string; value: Revision };
  /** typed but not yet taken by the server */
  drafts: { key: string; value: { readonly id: string; readonly base: Revision; readonly text: string } };
  /** field entries waiting to be sent */
  outbox: {
    key: string;
    value: { readonly id: string; readonly jobId: string; readonly body: unknown; readonly made: string };
  };
  /** photographs waiting to be sent */
  photographs: {
    key: string;
    value: {
      readonly id: string;
      readonly jobId: string;
      readonly file: Blob;
      readonly name: string;
      readonly note: string;
    };
  };
}

let opened: Promise<IDBPDatabase<Kept>> | undefined;

/** The device's own store; it may be forbidden (a private window), then nothing is kept and nothing breaks. */
export const keptHere = (): Promise<IDBPDatabase<Kept>> => {
  opened ??= openDB<Kept>("floorworthy", 1, {
    upgrade: (db) => {
      for (const name of ["seen", "drafts", "outbox", "photographs"] as const)
        db.createObjectStore(name, { keyPath: "id" });
    },
  });
  return opened;
};

/** Does it where the device allows it. */
export const ifAllowed = <T>(work: (db: IDBPDatabase<Kept>) => Promise<T>): Promise<T | undefined> =>
  keptHere()
    .then(work)
    .catch(() => undefined);
