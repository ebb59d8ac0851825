import { z } from "zod";

/** The bodies of the API, once: they check requests, type the routes and become its description. */
const documentId = z.string().regex(/^[A-Za-z0-9][\w.-]{0,99}$/, "letters, digits, dot, dash; at most 100");
const instant = z.iso.datetime({ offset: true });
const text = z.string().max(400_000, "a document has at most 400,000 characters");
const words = (most: number) => z.string().max(most, `at most ${most} characters`);

export const kind = z.enum(["job", "lift"]);
export const role = z.enum(["reader", "editor", "owner"]);
export const shelf = z.enum(["open", "put-away"]);

export const message = z.object({ message: z.string() });

export const heading = z.object({
  id: documentId,
  kind,
  number: z.int(),
  title: z.string(),
  shelf,
  note: z.string(),
  by: z.string(),
  at: z.string(),
});
export const revision = heading.extend({ text: z.string() });

export const byId = z.object({ id: documentId });
export const byNumber = byId.extend({ number: z.coerce.number().int().positive() });

export const newDocument = z.object({ text, note: words(200).optional() });
export const changed = z.object({
  basedOn: z.int().positive(),
  text,
  note: words(200).optional(),
  shelf: shelf.optional(),
});
export const conflict = z.object({ message: z.string(), head: revision });

/** plain data as in a job file: texts as a person writes them */
type Plain = string | number | Plain[] | { [key: string]: Plain };
const plain: z.ZodType<Plain> = z.lazy(() =>
  z.union([z.string().max(2000), z.number(), z.array(plain).max(200), z.record(z.string().max(60), plain)]),
);
const path = z.string().max(200);

/** Something noted in the field: facts set and list entries added, with an id made where it was noted. */
export const fieldEntry = z.object({
  id: z.uuid(),
  kind: z.enum(["drill reading", "hole record", "torque round", "pour note", "crack look", "photograph", "other"]),
  at: instant,
  set: z
    .array(z.object({ path, value: words(500) }))
    .max(100)
    .default([]),
  add: z
    .array(
      z.object({
        list: path,
        entry: plain,
        /** the keys that name an entry, one for each depth of list: one of the same name is written into, not doubled */
        by: z.array(z.string().max(60)).max(4).optional(),
      }),
    )
    .max(100)
    .default([]),
});
export const keptEntry = z.object({
  id: z.string(),
  documentId,
  kind: z.string(),
  body: z.string(),
  madeAt: z.string(),
  by: z.string(),
  receivedAt: z.string(),
  revision: z.int(),
});

export const attachment = z.object({
  hash: z.string(),
  name: z.string(),
  mime: z.string(),
  size: z.int(),
  note: z.string(),
  by: z.string(),
  at: z.string(),
});
export const byHash = z.object({ hash: z.string().regex(/^[0-9a-f]{64}$/) });

export const person = z.object({ id: z.string(), name: z.string(), role });
export const newPerson = z.object({ name: words(80).min(1), role, password: z.string().max(1000) });
export const credentials = z.object({ name: words(80), password: z.string().max(1000) });
export const session = z.object({
  accounts: z.enum(["open", "accounts"]),
  person: z.object({ name: z.string(), role }).optional(),
});

export const example = z.object({ id: z.string(), title: z.string(), note: z.string() });
