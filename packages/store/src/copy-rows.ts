/** In the order in which they can be filled again. Sessions are not kept: everybody signs in anew after a restore. */
export const order = ["people", "documents", "revisions", "entries", "files", "attachments"] as const;
export type Kept = (typeof order)[number];
export type Row = Record<string, unknown>;

export const keys: Readonly<Record<Kept, readonly string[]>> = {
  people: ["id"],
  documents: ["id"],
  revisions: ["document_id", "number"],
  entries: ["id"],
  files: ["hash"],
  attachments: ["document_id", "hash", "name"],
};

type Fits = (value: unknown) => boolean;
const text: Fits = (value) => typeof value === "string";
const written =
  (pattern: RegExp): Fits =>
  (value) =>
    typeof value === "string" && pattern.test(value);
const id = written(/^[A-Za-z0-9][\w.-]{0,99}$/);
const instant = written(/^\d{4}-\d\d-\d\dT[\d:.]+(Z|[+-]\d\d:\d\d)$/);
const count: Fits = (value) => Number.isSafeInteger(value) && (value as number) >= 0;

/** What a row of a copy holds; a file from elsewhere is believed nothing. */
const columns: Readonly<Record<Kept, Readonly<Record<string, Fits>>>> = {
  people: {
    id,
    name: text,
    name_key: text,
    role: written(/^(reader|editor|owner)$/),
    password_hash: text,
    at: instant,
  },
  documents: { id, kind: written(/^(job|lift)$/) },
  revisions: {
    document_id: id,
    number: count,
    title: text,
    text,
    shelf: written(/^(open|put-away)$/),
    note: text,
    by: text,
    at: instant,
  },
  entries: {
    id,
    document_id: id,
    kind: text,
    body: text,
    made_at: instant,
    by: text,
    received_at: instant,
    revision: count,
  },
  files: {
    hash: written(/^[0-9a-f]{64}$/),
    mime: written(/^[\w.+-]+\/[\w.+-]+$/),
    size: count,
    bytes: (value) => value instanceof Uint8Array,
  },
  attachments: { document_id: id, hash: text, name: text, note: text, by: text, at: instant },
};

/** Whether a row of a copy is one that this program writes: its columns, no others, each of its kind. */
export const isRowOf = (table: Kept, row: Row): boolean => {
  const wanted = Object.entries(columns[table]);
  return Object.keys(row).length === wanted.length && wanted.every(([name, fits]) => fits(row[name]));
};
