import { Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import type { Database } from "./database.ts";
import type { Tables } from "./tables.ts";

const lost = () => undefined;

/** @param address postgres://… */
export const openPostgres = (address: string): Database => {
  const pool = new pg.Pool({ connectionString: address, max: 10, connectionTimeoutMillis: 10_000 });
  // a connection lost while idle is replaced at the next use; without a listener it would end the program
  pool.on("error", lost);
  // one lost at work fails its query, which is told to whoever asked
  pool.on("connect", (client) => client.on("error", lost));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return {
    db,
    snapshot: async () => {
      const transaction = await db.startTransaction().setIsolationLevel("repeatable read").execute();
      await transaction.selectFrom("documents").select("id").limit(1).execute();
      return { db: transaction, close: () => transaction.rollback().execute() };
    },
    close: () => db.destroy(),
  };
};
