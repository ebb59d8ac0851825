import type { Kysely, Migration } from "kysely";

export const people: Migration = {
  up: async (db: Kysely<unknown>) => {
    await db.schema
      .createTable("people")
      .addColumn("id", "text", (column) => column.primaryKey())
      .addColumn("name", "text", (column) => column.notNull())
      .addColumn("name_key", "text", (column) => column.notNull().unique())
      .addColumn("role", "text", (column) => column.notNull())
      .addColumn("password_hash", "text", (column) => column.notNull())
      .addColumn("at", "text", (column) => column.notNull())
      .execute();
    await db.schema
      .createTable("sessions")
      .addColumn("token_hash", "text", (column) => column.primaryKey())
      .addColumn("person_id", "text", (column) => column.notNull().references("people.id"))
      .addColumn("expires_at", "text", (column) => column.notNull())
      .execute();
  },
};
