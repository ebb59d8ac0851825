import { createHash } from "node:crypto";

/** What the server has acknowledged, and what was under way when it was killed. */
export interface Ledger {
  /** the SHA-256 of a revision's text by its document and number */
  readonly revisions: Map<string, { readonly id: string; readonly number: number; readonly sha256: string }>;
  /** a field entry's document by its id */
  readonly entries: Map<string, string>;
  /** a file's document by its SHA-256 */
  readonly files: Map<string, string>;
  /** documents that were acknowledged as made */
  readonly documents: Set<string>;
  /** entries sent and never answered: to be sent again, and there once in the end */
  readonly unanswered: Map<string, { readonly id: string; readonly body: object }>;
  /** refused because somebody else wrote first, and never answered: nothing is owed */
  readonly counts: { conflicts: number; unanswered: number };
}

export const sha256 = (data: string | Uint8Array): string => createHash("sha256").update(data).digest("hex");

export const newLedger = (): Ledger => ({
  revisions: new Map(),
  entries: new Map(),
  files: new Map(),
  documents: new Set(),
  unanswered: new Map(),
  counts: { conflicts: 0, unanswered: 0 },
});

export const acknowledged = ({ revisions, entries, files, documents }: Ledger): number =>
  revisions.size + entries.size + files.size + documents.size;
