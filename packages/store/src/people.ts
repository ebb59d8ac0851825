import type { Kysely } from "kysely";
import { StoreRefusal } from "./refusal.ts";
import type { Person, Role, Store } from "./store.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Tables } from "./tables.ts";

const personOf = ({ id, name, role, password_hash }: Omit<Tables["people"], "at" | "name_key">): Person => ({
  id,
  name,
  role: role as Role,
  passwordHash: password_hash,
});

const keyOf = (name: string): string => name.normalize("NFKC").trim().toLowerCase();

const columns = ["people.id", "people.name", "people.role", "people.password_hash"] as const;

export const peopleIn = (
  db: Kysely<Tables>,
  { now, newId }: Surroundings,
): Pick<
  Store,
  "addPerson" | "people" | "personNamed" | "setRole" | "openSession" | "personOfSession" | "endSession"
> => ({
  addPerson: async ({ name, role, passwordHash }) => {
    const id = newId();
    const added = await db
      .insertInto("people")
      .values({ id, name: name.trim(), name_key: keyOf(name), role, password_hash: passwordHash, at: now() })
      .onConflict((conflict) => conflict.column("name_key").doNothing())
      .executeTakeFirst();
    if (added.numInsertedOrUpdatedRows !== 1n) throw new StoreRefusal("Somebody has that name already.");
    return { id, name: name.trim(), role, passwordHash };
  },

  people: async () => (await db.selectFrom("people").select(columns).orderBy("name_key").execute()).map(personOf),

  personNamed: async (name) => {
    const row = await db.selectFrom("people").select(columns).where("name_key", "=", keyOf(name)).executeTakeFirst();
    return row && personOf(row);
  },

  setRole: async (id, role) => {
    const people = await db.selectFrom("people").select(["id", "role"]).execute();
    const last = people.filter((person) => person.role === "owner").every((person) => person.id === id);
    if (last && role !== "owner") throw new StoreRefusal("The last owner stays one.");
    await db.updateTable("people").set({ role }).where("id", "=", id).execute();
  },

  openSession: async (tokenHash, personId, expiresAt) => {
    await db.deleteFrom("sessions").where("expires_at", "<", now()).execute();
    await db
      .insertInto("sessions")
      .values({ token_hash: tokenHash, person_id: personId, expires_at: expiresAt })
      .execute();
  },

  personOfSession: async (tokenHash) => {
    const row = await db
      .selectFrom("sessions")
      .innerJoin("people", "people.id", "sessions.person_id")
      .select(columns)
      .where("sessions.token_hash", "=", tokenHash)
      .where("sessions.expires_at", ">", now())
      .executeTakeFirst();
    return row && personOf(row);
  },

  endSession: async (tokenHash) => {
    await db.deleteFrom("sessions").where("token_hash", "=", tokenHash).execute();
  },
});
