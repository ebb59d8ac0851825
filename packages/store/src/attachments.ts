import { createHash } from "node:crypto";
import type { Kysely } from "kysely";
import { StoreRefusal } from "./refusal.ts";
import type { Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

export const attachmentsIn = (
  db: Kysely<Tables>,
  { now }: Surroundings,
): Pick<Store, "attach" | "attachments" | "attachment"> => ({
  attach: async (documentId, { bytes, name, mime, note = "", by }) => {
    const hash = createHash("sha256").update(bytes).digest("hex");
    const at = now();
    await db.transaction().execute(async (within) => {
      const document = await within
        .selectFrom("documents")
        .select("id")
        .where("id", "=", documentId)
        .executeTakeFirst();
      if (!document) throw new StoreRefusal("There is no such document.");
      await within
        .insertInto("files")
        .values({ hash, mime, size: bytes.length, bytes: Buffer.from(bytes) })
        .onConflict((conflict) => conflict.column("hash").doNothing())
        .execute();
      await within
        .insertInto("attachments")
        .values({ document_id: documentId, hash, name, note, by, at })
        .onConflict((conflict) => conflict.columns(["document_id", "hash", "name"]).doNothing())
        .execute();
    });
    return { hash, name, mime, size: bytes.length, note, by, at };
  },

  attachments: (documentId) =>
    db
      .selectFrom("attachments")
      .innerJoin("files", "files.hash", "attachments.hash")
      .select([
        "attachments.hash",
        "attachments.name",
        "attachments.note",
        "attachments.by",
        "attachments.at",
        "files.mime",
        "files.size",
      ])
      .where("attachments.document_id", "=", documentId)
      .orderBy("attachments.at")
      .orderBy("attachments.name")
      .execute(),

  attachment: async (hash) => {
    const row = await db.selectFrom("files").select(["bytes", "mime"]).where("hash", "=", hash).executeTakeFirst();
    return row && { bytes: new Uint8Array(row.bytes), mime: row.mime };
  },
});
