import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { DatabaseSync, type DatabaseSyncInstance } from "@photostructure/sqlite";
import { Kysely, type SqliteDatabase, SqliteDialect } from "kysely";
import type { Database } from "./database.ts";
import type { Tables } from "./tables.ts";

type Value = Parameters<ReturnType<DatabaseSyncInstance["prepare"]>["all"]>[number];

/** The driver as Kysely wants to see one. */
const asKyselyWants = (database: DatabaseSyncInstance): SqliteDatabase => ({
  close: () => database.close(),
  prepare: (text) => {
    const statement = database.prepare(text);
    return {
      reader: statement.columns().length > 0,
      all: (values) => statement.all(...(values as Value[])),
      run: (values) => statement.run(...(values as Value[])),
      iterate: (values) => statement.iterate(...(values as Value[])),
    };
  },
});

/** A write has reached the disk before it is acknowledged: the log is synced at every commit. */
const connect = (path: string): { raw: DatabaseSyncInstance; db: Kysely<Tables> } => {
  const raw = new DatabaseSync(path);
  raw.exec(
    "pragma journal_mode = wal; pragma synchronous = full; pragma foreign_keys = on; pragma busy_timeout = 10000;",
  );
  return { raw, db: new Kysely<Tables>({ dialect: new SqliteDialect({ database: asKyselyWants(raw) }) }) };
};

/** @param path of the file; its folder is made */
export const openSqlite = (path: string): Database => {
  mkdirSync(dirname(path), { recursive: true });
  const { raw, db } = connect(path);
  return {
    db,
    snapshot: async () => {
      const own = connect(path);
      own.raw.exec("begin");
      own.raw.prepare("select count(*) from documents").all(); // the view is taken at the first read
      const close = async () => {
        own.raw.exec("rollback");
        own.raw.close();
      };
      return { db: own.db, close };
    },
    close: async () => raw.close(),
  };
};
