import type { Kysely, Migration } from "kysely";

export const documents: Migration = {
  up: async (db: Kysely<unknown>) => {
    await db.schema
      .createTable("documents")
      .addColumn("id", "text", (column) => column.primaryKey())
      .addColumn("kind", "text", (column) => column.notNull())
      .execute();
    await db.schema
      .createTable("revisions")
      .addColumn("document_id", "text", (column) => column.notNull().references("documents.id"))
      .addColumn("number", "integer", (column) => column.notNull())
      .addColumn("title", "text", (column) => column.notNull())
      .addColumn("text", "text", (column) => column.notNull())
      .addColumn("shelf", "text", (column) => column.notNull())
      .addColumn("note", "text", (column) => column.notNull())
      .addColumn("by", "text", (column) => column.notNull())
      .addColumn("at", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("revisions_once", ["document_id", "number"])
      .execute();
  },
};
