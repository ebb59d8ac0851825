import { createHash, randomBytes } from "node:crypto";
import type { Person, Role, Store } from "@floorworthy/store";
import { hash, verify } from "@node-rs/argon2";

const DAYS = 30;

/** Long enough to be worth hashing, short enough not to be a burden on the machine. */
export const passwordFault = (password: string): string | undefined =>
  password.length < 10
    ? "A password has at least 10 characters."
    : password.length > 200
      ? "A password has at most 200 characters."
      : undefined;

export const hashPassword = (password: string): Promise<string> => hash(password);

const tokenHash = (token: string): string => createHash("sha256").update(token).digest("hex");

/** Taken in place of a missing person's, so that a wrong name takes as long as a wrong password. */
const nobody = hashPassword("nobody has this password");

export const signIn = async (
  store: Store,
  name: string,
  password: string,
): Promise<{ token: string; person: Person } | undefined> => {
  const person = await store.personNamed(name);
  const right = await verify(person?.passwordHash ?? (await nobody), password);
  if (!person || !right) return undefined;
  const token = randomBytes(32).toString("base64url");
  const expires = new Date(Date.now() + DAYS * 86_400_000).toISOString();
  await store.openSession(tokenHash(token), person.id, expires);
  return { token, person };
};

export const personOf = (store: Store, token: string | undefined): Promise<Person | undefined> =>
  token === undefined ? Promise.resolve(undefined) : store.personOfSession(tokenHash(token));

export const signOut = async (store: Store, token: string | undefined): Promise<void> => {
  if (token !== undefined) await store.endSession(tokenHash(token));
};

const ranks: readonly Role[] = ["reader", "editor", "owner"];

export const mayDo = (has: Role, needed: Role): boolean => ranks.indexOf(has) >= ranks.indexOf(needed);
