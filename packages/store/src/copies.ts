import { createHash } from "node:crypto";
import { pipeline, Readable } from "node:stream";
import { createGunzip, createGzip } from "node:zlib";
import type { Kysely } from "kysely";
import { isRowOf, type Kept, keys, order, type Row } from "./copy-rows.ts";
import type { Database } from "./database.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

interface Heading {
  readonly floorworthy: "backup" | "document";
  readonly version: 1;
  readonly at: string;
}

/** The rows of a table whose column holds one of these. */
type Only = Partial<Record<Kept, { readonly column: string; readonly among: readonly string[] }>>;

/** Rows of one table, a few at a time, so that photographs are never all in memory. */
async function* rowsOf(db: Kysely<Tables>, table: Kept, only: Only[Kept]): AsyncIterable<Row> {
  if (only?.among.length === 0) return;
  const step = table === "files" ? 4 : 200;
  for (let from = 0; ; from += step) {
    let query = db.selectFrom(table as "documents").selectAll();
    if (only) query = query.where(only.column as "id", "in", only.among);
    for (const key of keys[table]) query = query.orderBy(key as "id");
    const rows = (await query.limit(step).offset(from).execute()) as Row[];
    yield* rows;
    if (rows.length < step) return;
  }
}

const line = (value: object): string => `${JSON.stringify(value)}\n`;

const written = (table: Kept, row: Row): string =>
  line(
    table === "files"
      ? { table, ...row, bytes: Buffer.from(row.bytes as Uint8Array).toString("base64") }
      : { table, ...row },
  );

async function* linesOf(db: Kysely<Tables>, heading: Heading, only?: Only): AsyncIterable<string> {
  yield line(heading);
  for (const table of order) {
    if (only && !only[table]) continue;
    for await (const row of rowsOf(db, table, only?.[table])) yield written(table, row);
  }
  yield line({ end: "complete" });
}

/** What goes wrong in a stream is thrown where it is read. */
const thrownThere = () => undefined;

const gzipped = (lines: AsyncIterable<string>): AsyncIterable<Uint8Array> =>
  pipeline(Readable.from(lines), createGzip(), thrownThere);

const broken = () =>
  new StoreRefusal("This file is no complete backup or export of Floorworthy. Nothing was taken from it.");

/** Of one line; the largest photograph that is taken makes less. */
const LONGEST = 64_000_000;

/** The lines of a gzipped text; refuses bytes that are none. */
async function* unzippedLines(bytes: AsyncIterable<Uint8Array>): AsyncIterable<string> {
  const decoder = new TextDecoder();
  let rest = "";
  try {
    for await (const part of pipeline(Readable.from(bytes), createGunzip(), thrownThere)) {
      const lines = (rest + decoder.decode(part as Uint8Array, { stream: true })).split("\n");
      rest = lines.pop()!;
      if (rest.length > LONGEST) throw broken();
      yield* lines;
    }
  } catch (error) {
    throw error instanceof StoreRefusal ? error : broken();
  }
  if (rest !== "") throw broken();
}

/** The rows of a copy; refuses anything that is not one, and one that was cut off. */
async function* readCopy(
  bytes: AsyncIterable<Uint8Array>,
  kind: Heading["floorworthy"],
): AsyncIterable<{ readonly table: Kept; readonly row: Row }> {
  let state: "before" | "inside" | "complete" = "before";
  for await (const text of unzippedLines(bytes)) {
    const { table, ...row } = parsed(text);
    if (state === "before") {
      if (row.floorworthy !== kind || row.version !== 1) throw broken();
      state = "inside";
    } else if (row.end === "complete") state = "complete";
    else if (state === "inside") yield keptRow(table, row);
    else throw broken();
  }
  if (state !== "complete") throw broken();
}

const keptRow = (table: unknown, given: Row): { readonly table: Kept; readonly row: Row } => {
  const kept = order.find((each) => each === table);
  if (!kept) throw broken();
  const row = kept === "files" ? { ...given, bytes: Buffer.from(String(given.bytes), "base64") } : given;
  if (!isRowOf(kept, row) || (kept === "files" && sha256(row.bytes as Uint8Array) !== row.hash)) throw broken();
  return { table: kept, row };
};

const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

const parsed = (text: string): Row => {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === "object" && value !== null) return value as Row;
  } catch {
    // told below
  }
  throw broken();
};

const insert = (db: Kysely<Tables>, table: Kept, row: Row) =>
  db.insertInto(table as "documents").values(row as Tables["documents"]);

export const copies = (
  { db, snapshot }: Database,
  { now, newId }: Surroundings,
): Pick<Store, "backup" | "restore" | "exportDocument" | "importDocument"> => ({
  backup: () =>
    gzipped(
      (async function* () {
        const view = await snapshot();
        try {
          yield* linesOf(view.db, { floorworthy: "backup", version: 1, at: now() });
        } finally {
          await view.close();
        }
      })(),
    ),

  restore: (bytes) =>
    db.transaction().execute(async (within) => {
      for (const table of ["documents", "people"] as const)
        if (await within.selectFrom(table).select("id").limit(1).executeTakeFirst())
          throw new StoreRefusal("A backup is restored into an empty store only, so that nothing is overwritten.");
      for await (const { table, row } of readCopy(bytes, "backup")) await insert(within, table, row).execute();
    }),

  exportDocument: (id) =>
    gzipped(
      (async function* () {
        const view = await snapshot();
        try {
          const document = await view.db.selectFrom("documents").select("id").where("id", "=", id).executeTakeFirst();
          if (!document) throw new StoreRefusal("There is no such document.");
          const linked = await view.db.selectFrom("attachments").select("hash").where("document_id", "=", id).execute();
          const mine = { column: "document_id", among: [id] };
          yield* linesOf(
            view.db,
            { floorworthy: "document", version: 1, at: now() },
            {
              documents: { column: "id", among: [id] },
              revisions: mine,
              entries: mine,
              files: { column: "hash", among: linked.map(({ hash }) => hash) },
              attachments: mine,
            },
          );
        } finally {
          await view.close();
        }
      })(),
    ),

  importDocument: (bytes) =>
    db.transaction().execute(async (within) => {
      let id = "";
      let revisions = 0;
      for await (const { table, row } of readCopy(bytes, "document")) {
        if (table === "people" || (table === "documents") !== (id === "")) throw broken();
        if (table === "documents") {
          id = await freeId(within, String(row.id), newId);
          await insert(within, table, { ...row, id }).execute();
        } else if (table === "files") {
          await insert(within, table, row)
            .onConflict((conflict) => conflict.column("hash" as "id").doNothing())
            .execute();
        } else {
          if (table === "revisions" && row.number !== ++revisions) throw broken();
          if (table === "entries" && !(Number(row.revision) <= revisions)) throw broken();
          const own = { ...row, document_id: id };
          await insert(within, table, table === "entries" ? await unclaimed(within, own, newId) : own).execute();
        }
      }
      if (revisions === 0) throw broken();
      return id;
    }),
});

const freeId = async (db: Kysely<Tables>, id: string, newId: () => string): Promise<string> =>
  (await db.selectFrom("documents").select("id").where("id", "=", id).executeTakeFirst()) ? newId() : id;

/** An entry of a document imported a second time gets an id of its own. */
const unclaimed = async (db: Kysely<Tables>, row: Row, newId: () => string): Promise<Row> => {
  const taken = await db.selectFrom("entries").select("id").where("id", "=", String(row.id)).executeTakeFirst();
  return taken ? { ...row, id: newId() } : row;
};
