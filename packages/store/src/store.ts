/** Jobs and lift sheets are documents: a text with all its revisions. Nothing written is ever overwritten or taken away. */
export type DocumentKind = "job" | "lift";

/** `put-away`: no longer in the list; its history stays. */
export type Shelf = "open" | "put-away";

export interface Revision {
  readonly id: string;
  readonly kind: DocumentKind;
  /** counts from 1 */
  readonly number: number;
  readonly title: string;
  readonly text: string;
  readonly shelf: Shelf;
  /** why it was written, e.g. "torque round by phone" */
  readonly note: string;
  readonly by: string;
  /** ISO instant, UTC */
  readonly at: string;
}

/** A document's latest revision without its text. */
export type Heading = Omit<Revision, "text">;
export type History = readonly Heading[];

export interface Saved {
  readonly outcome: "saved";
  readonly revision: Revision;
}

/** Somebody else wrote in between: nothing was saved, here is what stands now. */
export interface Conflict {
  readonly outcome: "conflict";
  readonly head: Revision;
}

/** Something noted in the field, with an id made where it was noted: sent twice, it is kept once. */
export interface Entry {
  readonly id: string;
  readonly documentId: string;
  readonly kind: string;
  /** JSON text */
  readonly body: string;
  readonly madeAt: string;
  readonly by: string;
  readonly receivedAt: string;
  /** the revision that took it in */
  readonly revision: number;
}

export interface Attachment {
  /** SHA-256 of its bytes, hex */
  readonly hash: string;
  readonly name: string;
  readonly mime: string;
  readonly size: number;
  readonly note: string;
  readonly by: string;
  readonly at: string;
}

/** reader: looks · editor: writes · owner: also manages people */
export type Role = "reader" | "editor" | "owner";

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly passwordHash: string;
}

export type NewPerson = Omit<Person, "id">;

interface Written {
  readonly title: string;
  readonly text: string;
  readonly note?: string;
  readonly shelf?: Shelf;
  readonly by: string;
}

/**
 * Where jobs are kept. One contract for every database (tests/store/contract.ts). Every promise that resolves has been
 * written to disk. Refusals are thrown as StoreRefusal.
 */
export interface Store {
  readonly create: (kind: DocumentKind, written: Written & { readonly id?: string }) => Promise<Revision>;
  /** @param basedOn the revision the writer had read */
  readonly save: (id: string, basedOn: number, written: Written) => Promise<Saved | Conflict>;
  /** the latest revision, or the one of that number */
  readonly read: (id: string, number?: number) => Promise<Revision | undefined>;
  readonly list: (kind: DocumentKind, shelf?: Shelf) => Promise<readonly Heading[]>;
  readonly history: (id: string) => Promise<History>;

  /**
   * Takes an entry into its document as a new revision, once however often it is sent.
   * @param edit makes the new text of the latest one; what it throws leaves nothing behind
   */
  readonly enter: (
    entry: Omit<Entry, "receivedAt" | "revision">,
    edit: (text: string) => { readonly text: string; readonly title: string },
  ) => Promise<Entry>;
  readonly entries: (documentId: string) => Promise<readonly Entry[]>;

  readonly attach: (
    documentId: string,
    file: {
      readonly bytes: Uint8Array;
      readonly name: string;
      readonly mime: string;
      readonly note?: string;
      readonly by: string;
    },
  ) => Promise<Attachment>;
  readonly attachments: (documentId: string) => Promise<readonly Attachment[]>;
  readonly attachment: (hash: string) => Promise<{ readonly bytes: Uint8Array; readonly mime: string } | undefined>;

  readonly addPerson: (person: NewPerson) => Promise<Person>;
  readonly people: () => Promise<readonly Person[]>;
  readonly personNamed: (name: string) => Promise<Person | undefined>;
  readonly setRole: (id: string, role: Role) => Promise<void>;
  readonly openSession: (tokenHash: string, personId: string, expiresAt: string) => Promise<void>;
  readonly personOfSession: (tokenHash: string) => Promise<Person | undefined>;
  readonly endSession: (tokenHash: string) => Promise<void>;

  /** everything, as it stood at one instant, as gzipped lines of JSON, while others go on writing */
  readonly backup: () => AsyncIterable<Uint8Array>;
  /** fills an empty store from a backup of either database */
  readonly restore: (bytes: AsyncIterable<Uint8Array>) => Promise<void>;
  /** one document with its history, entries and attachments */
  readonly exportDocument: (id: string) => AsyncIterable<Uint8Array>;
  /** @returns the id it now has: its own, or a new one where that is taken */
  readonly importDocument: (bytes: AsyncIterable<Uint8Array>) => Promise<string>;

  readonly close: () => Promise<void>;
}
