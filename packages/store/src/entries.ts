import type { Kysely } from "kysely";
import { appendRevision, readRevision } from "./documents.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Entry, Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

const entryOf = ({ document_id, made_at, received_at, ...rest }: Tables["entries"]): Entry => ({
  ...rest,
  documentId: document_id,
  madeAt: made_at,
  receivedAt: received_at,
});

const known = async (db: Kysely<Tables>, id: string): Promise<Entry | undefined> => {
  const row = await db.selectFrom("entries").selectAll().where("id", "=", id).executeTakeFirst();
  return row && entryOf(row);
};

/** How often an entry makes way for others that write the same document at the same moment. */
const TRIES = 20;

export const entriesIn = (db: Kysely<Tables>, { now }: Surroundings): Pick<Store, "enter" | "entries"> => ({
  enter: async (entry, edit) => {
    for (let attempt = 0; attempt < TRIES; attempt++) {
      const kept = await known(db, entry.id);
      if (kept && kept.documentId !== entry.documentId)
        throw new StoreRefusal("An entry of that id belongs to another job.");
      if (kept) return kept;
      const head = await readRevision(db, entry.documentId);
      if (!head) throw new StoreRefusal("There is no such document.");
      const number = head.number + 1;
      const { text, title } = edit(head.text);
      const row: Tables["entries"] = {
        id: entry.id,
        document_id: entry.documentId,
        kind: entry.kind,
        body: entry.body,
        made_at: entry.madeAt,
        by: entry.by,
        received_at: now(),
        revision: number,
      };
      const revision = {
        id: head.id,
        number,
        title,
        text,
        shelf: head.shelf,
        note: entry.kind,
        by: entry.by,
        at: row.received_at,
      };
      const taken = await db
        .transaction()
        .execute(async (within) => {
          if ((await appendRevision(within, revision)) === "not-written") throw otherFirst;
          const added = await within
            .insertInto("entries")
            .values(row)
            .onConflict((conflict) => conflict.column("id").doNothing())
            .executeTakeFirst();
          if (added.numInsertedOrUpdatedRows !== 1n) throw otherFirst;
          return "taken" as const;
        })
        .catch((error: unknown) => {
          if (error === otherFirst) return "again" as const;
          throw error;
        });
      if (taken === "taken") return entryOf(row);
    }
    throw new StoreRefusal("Too many people write this job at once. Send it again.");
  },

  entries: async (documentId) => {
    const rows = await db
      .selectFrom("entries")
      .selectAll()
      .where("document_id", "=", documentId)
      .orderBy("revision")
      .execute();
    return rows.map(entryOf);
  },
});

/** Rolls the transaction back: somebody wrote first. */
const otherFirst = new Error("somebody wrote first");
