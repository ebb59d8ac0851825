import { type Kysely, sql } from "kysely";
import { StoreRefusal } from "./refusal.ts";
import type { DocumentKind, Heading, Revision, Shelf, Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

type Row = Tables["revisions"] & { kind: string };
type HeadingRow = Omit<Row, "text">;

const heading = ({ document_id, kind, shelf, number, title, note, by, at }: HeadingRow): Heading => ({
  id: document_id,
  kind: kind as DocumentKind,
  number,
  title,
  shelf: shelf as Shelf,
  note,
  by,
  at,
});

const headingColumns = [
  "documents.kind",
  "revisions.document_id",
  "revisions.number",
  "revisions.title",
  "revisions.shelf",
  "revisions.note",
  "revisions.by",
  "revisions.at",
] as const;

const revisionsOf = (db: Kysely<Tables>, id: string) =>
  db
    .selectFrom("revisions")
    .innerJoin("documents", "documents.id", "revisions.document_id")
    .where("revisions.document_id", "=", id);

/** The latest revision, or the one of that number. */
export const readRevision = async (db: Kysely<Tables>, id: string, number?: number): Promise<Revision | undefined> => {
  const all = revisionsOf(db, id).select([...headingColumns, "revisions.text"]);
  const row = await (number === undefined
    ? all.orderBy("revisions.number", "desc").limit(1)
    : all.where("revisions.number", "=", number)
  ).executeTakeFirst();
  return row && { ...heading(row), text: row.text };
};

/**
 * Writes revision `basedOn + 1` where `basedOn` stands and nobody has written after it.
 * @returns whether it was written
 */
export const appendRevision = async (
  db: Kysely<Tables>,
  { id, number, title, text, shelf, note, by, at }: Omit<Revision, "kind">,
): Promise<"written" | "not-written"> => {
  const values = [id, number, title, text, shelf, note, by, at].map((value) => sql`${value}`);
  const typed = [
    sql`cast(${id} as text)`,
    sql`cast(${number} as integer)`,
    ...values.slice(2).map((v) => sql`cast(${v} as text)`),
  ];
  const { numAffectedRows } = await sql`
    insert into revisions (document_id, number, title, text, shelf, note, "by", "at")
    select ${sql.join(typed)}
    where exists (select 1 from revisions where document_id = ${id} and number = ${number - 1})
    on conflict (document_id, number) do nothing`.execute(db);
  return numAffectedRows === 1n ? "written" : "not-written";
};

export const documentsIn = (
  db: Kysely<Tables>,
  { now, newId }: Surroundings,
): Pick<Store, "create" | "save" | "read" | "list" | "history"> => ({
  create: async (kind, { id = newId(), title, text, note = "", shelf = "open", by }) => {
    const revision = { id, kind, number: 1, title, text, shelf, note, by, at: now() } as const;
    await db.transaction().execute(async (within) => {
      const made = await within
        .insertInto("documents")
        .values({ id, kind })
        .onConflict((conflict) => conflict.column("id").doNothing())
        .executeTakeFirst();
      if (made.numInsertedOrUpdatedRows !== 1n) throw new StoreRefusal("There is a document of that id already.");
      const { kind: _, id: document_id, ...columns } = revision;
      await within
        .insertInto("revisions")
        .values({ document_id, ...columns })
        .execute();
    });
    return revision;
  },

  save: async (id, basedOn, { title, text, note = "", shelf = "open", by }) => {
    const revision = { id, number: basedOn + 1, title, text, shelf, note, by, at: now() };
    const result = await appendRevision(db, revision);
    const head = await readRevision(db, id, result === "written" ? basedOn + 1 : undefined);
    if (!head) throw new StoreRefusal("There is no such document.");
    return result === "written" ? { outcome: "saved", revision: head } : { outcome: "conflict", head };
  },

  read: (id, number) => readRevision(db, id, number),

  list: async (kind, shelf = "open") => {
    const rows = await db
      .selectFrom("revisions")
      .innerJoin("documents", "documents.id", "revisions.document_id")
      .innerJoin(
        (query) =>
          query
            .selectFrom("revisions as every")
            .select(({ fn }) => ["every.document_id as head_id", fn.max("every.number").as("head_number")])
            .groupBy("every.document_id")
            .as("heads"),
        (join) =>
          join.onRef("heads.head_id", "=", "revisions.document_id").onRef("heads.head_number", "=", "revisions.number"),
      )
      .select(headingColumns)
      .where("documents.kind", "=", kind)
      .where("revisions.shelf", "=", shelf)
      .orderBy("revisions.at", "desc")
      .orderBy("revisions.document_id")
      .execute();
    return rows.map(heading);
  },

  history: async (id) => {
    const rows = await revisionsOf(db, id).select(headingColumns).orderBy("revisions.number", "desc").execute();
    return rows.map(heading);
  },
});
