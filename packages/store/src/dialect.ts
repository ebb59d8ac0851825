import { type Kysely, PostgresAdapter } from "kysely";

// biome-ignore lint/suspicious/noExplicitAny: whatever tables it has
export const isPostgres = (db: Kysely<any>): boolean => db.getExecutor().adapter instanceof PostgresAdapter;
