import { createHash } from "node:crypto";
import { pipeline, Readable } from "node:stream";
import { createGunzip, createGzip } from "node:zlib";
import type { Kysely } from "kysely";
import type { Database } from "./database.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

/** In the order in which they can be filled again. Sessions are not kept: everybody signs in anew after a restore. */
const order = ["people", "documents", "revisions", "entries", "files", "attachments"] as const;
type Kept = (typeof order)[number];

const keys: Readonly<Record<Kept, readonly string[]>> = {
  people: ["id"],
  documents: ["id"],
  revisions: ["document_id", "number"],
  entries: ["id"],
  files: ["hash"],
  attachments: ["document_id", "hash", "name"],
};

interface Heading {
  readonly floorworthy: "backup" | "document";
  readonly version: 1;
  readonly at: string;
}

type Row = Record<string, unknown>;

/** Rows of one table, a few at a time, so that photographs are never all in memory. */
async function* rowsOf(db: Kysely<Tables>, table: Kept, only: ((row: Row) => boolean) | undefined): AsyncIterable<Row> {
  const step = table === "files" ? 4 : 200;
  for (let from = 0; ; from += step) {
    let query = db.selectFrom(table as "documents").selectAll();
    for (const key of keys[table]) query = query.orderBy(key as "id");
    const rows = (await query.limit(step).offset(from).execute()) as Row[];
    yield* only ? rows.filter(only) : rows;
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

async function* linesOf(
  db: Kysely<Tables>,
  heading: Heading,
  only?: Partial<Record<Kept, (row: Row) => boolean>>,
): AsyncIterable<string> {
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

/** The lines of a gzipped text; refuses bytes that are none. */
async function* unzippedLines(bytes: AsyncIterable<Uint8Array>): AsyncIterable<string> {
  const decoder = new TextDecoder();
  let rest = "";
  try {
    for await (const part of pipeline(Readable.from(bytes), createGunzip(), thrownThere)) {
      const lines = (rest + decoder.decode(part as Uint8Array, { stream: true })).split("\n");
      rest = lines.pop()!;
      yield* lines;
    }
  } catch {
    throw broken();
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
    else if (order.includes(table as Kept))
      yield {
        table: table as Kept,
        row: table === "files" ? { ...row, bytes: Buffer.from(String(row.bytes), "base64") } : row,
      };
    else throw broken();
  }
  if (state !== "complete") throw broken();
}

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
          const hashes = new Set(linked.map(({ hash }) => hash));
          const mine = (row: Row) => row.document_id === id;
          yield* linesOf(
            view.db,
            { floorworthy: "document", version: 1, at: now() },
            {
              documents: (row) => row.id === id,
              revisions: mine,
              entries: mine,
              files: (row) => hashes.has(String(row.hash)),
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
      for await (const { table, row } of readCopy(bytes, "document")) {
        if (table === "people") throw broken();
        if (table === "documents") {
          const taken = await within
            .selectFrom("documents")
            .select("id")
            .where("id", "=", String(row.id))
            .executeTakeFirst();
          id = taken ? newId() : String(row.id);
          await insert(within, table, { ...row, id }).execute();
        } else if (table === "files") {
          if (
            createHash("sha256")
              .update(row.bytes as Uint8Array)
              .digest("hex") !== row.hash
          )
            throw broken();
          await insert(within, table, row)
            .onConflict((conflict) => conflict.column("hash" as "id").doNothing())
            .execute();
        } else {
          const own = { ...row, document_id: id };
          await insert(within, table, table === "entries" ? await unclaimed(within, own, newId) : own).execute();
        }
      }
      if (id === "") throw broken();
      return id;
    }),
});

/** An entry of a document imported a second time gets an id of its own. */
const unclaimed = async (db: Kysely<Tables>, row: Row, newId: () => string): Promise<Row> => {
  const taken = await db.selectFrom("entries").select("id").where("id", "=", String(row.id)).executeTakeFirst();
  return taken ? { ...row, id: newId() } : row;
};
