import { randomUUID } from "node:crypto";
import { type Kysely, Migrator } from "kysely";
import { attachmentsIn } from "./attachments.ts";
import { copies } from "./copies.ts";
import type { Database } from "./database.ts";
import { documentsIn } from "./documents.ts";
import { entriesIn } from "./entries.ts";
import { migrations } from "./migrations/index.ts";
import { peopleIn } from "./people.ts";
import { openPostgres } from "./postgres.ts";
import { StoreRefusal } from "./refusal.ts";
import { openSqlite } from "./sqlite.ts";
import type { Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

export interface OpenOptions extends Partial<Surroundings> {
  /** brings the tables to this migration only, by its name; for tests of upgrades */
  readonly upTo?: keyof typeof migrations;
}

const surroundings: Surroundings = { now: () => new Date().toISOString(), newId: randomUUID };

/**
 * Opens the store and brings its tables up to date.
 * @param address a file's path for SQLite, or postgres://… for PostgreSQL
 */
export const openStore = async (address: string, options: OpenOptions = {}): Promise<Store> => {
  const database: Database = /^postgres(ql)?:/.test(address) ? openPostgres(address) : openSqlite(address);
  try {
    await migrate(database.db, options.upTo);
  } catch (error) {
    await database.close();
    throw error;
  }
  const around = { ...surroundings, ...options };
  return {
    ...documentsIn(database.db, around),
    ...entriesIn(database.db, around),
    ...attachmentsIn(database.db, around),
    ...peopleIn(database.db, around),
    ...copies(database, around),
    close: database.close,
  };
};

const migrate = async (db: Kysely<Tables>, upTo: string | undefined): Promise<void> => {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations }) } });
  const standing = await migrator.getMigrations().catch(newer);
  const last = Object.keys(migrations).at(-1);
  if (standing.every(({ executedAt }) => executedAt) && (upTo ?? last) === last) return;
  const { error } = upTo === undefined ? await migrator.migrateToLatest() : await migrator.migrateTo(upTo);
  if (error) await newer(error);
};

/** A store of a later version is left alone. */
const newer = (error: unknown): never => {
  if (/corrupted migrations/.test(String(error)))
    throw new StoreRefusal("This store was written by a later version of Floorworthy. Nothing was changed in it.");
  throw error;
};
