import type { Kysely } from "kysely";
import type { Tables } from "./tables.ts";

/** An open database. Both kinds give the same. */
export interface Database {
  readonly db: Kysely<Tables>;
  /** a view of everything as it stands now, that others' writing does not disturb; the caller closes it */
  readonly snapshot: () => Promise<{ readonly db: Kysely<Tables>; readonly close: () => Promise<void> }>;
  readonly close: () => Promise<void>;
}
