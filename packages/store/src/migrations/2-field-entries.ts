import type { Kysely, Migration } from "kysely";
import { sql } from "kysely";
import { isPostgres } from "../dialect.ts";

export const fieldEntries: Migration = {
  up: async (db: Kysely<unknown>) => {
    await db.schema
      .createTable("entries")
      .addColumn("id", "text", (column) => column.primaryKey())
      .addColumn("document_id", "text", (column) => column.notNull().references("documents.id"))
      .addColumn("kind", "text", (column) => column.notNull())
      .addColumn("body", "text", (column) => column.notNull())
      .addColumn("made_at", "text", (column) => column.notNull())
      .addColumn("by", "text", (column) => column.notNull())
      .addColumn("received_at", "text", (column) => column.notNull())
      .addColumn("revision", "integer", (column) => column.notNull())
      .execute();
    await db.schema.createIndex("entries_of_document").on("entries").column("document_id").execute();
    await db.schema
      .createTable("files")
      .addColumn("hash", "text", (column) => column.primaryKey())
      .addColumn("mime", "text", (column) => column.notNull())
      .addColumn("size", "integer", (column) => column.notNull())
      .addColumn("bytes", isPostgres(db) ? sql`bytea` : "blob", (column) => column.notNull())
      .execute();
    await db.schema
      .createTable("attachments")
      .addColumn("document_id", "text", (column) => column.notNull().references("documents.id"))
      .addColumn("hash", "text", (column) => column.notNull().references("files.hash"))
      .addColumn("name", "text", (column) => column.notNull())
      .addColumn("note", "text", (column) => column.notNull())
      .addColumn("by", "text", (column) => column.notNull())
      .addColumn("at", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("attachments_once", ["document_id", "hash", "name"])
      .execute();
  },
};
