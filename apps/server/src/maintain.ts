import { createReadStream, createWriteStream, existsSync } from "node:fs";
import { createInterface } from "node:readline/promises";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { openStore, type Role, type Store, StoreRefusal } from "@floorworthy/store";
import { hashPassword, passwordFault } from "./sign-in.ts";

const usage = `What can be done beside serving:
  backup FILE              everything in the store, while it is being used, into one new file
  restore FILE             a backup into an empty store
  add-person NAME ROLE     reader, editor or owner; the password is read from the terminal`;

const backup = async (store: Store, file: string): Promise<void> => {
  if (existsSync(file)) throw new StoreRefusal(`${file} is there already; a backup overwrites nothing.`);
  await pipeline(Readable.from(store.backup()), createWriteStream(file, { flags: "wx" }));
  console.log(`Backed up into ${file}.`);
};

const restore = async (store: Store, file: string): Promise<void> => {
  if (!existsSync(file)) throw new StoreRefusal(`${file}: there is no such file.`);
  await store.restore(createReadStream(file));
  console.log(`Restored ${(await store.list("job")).length} jobs from ${file}.`);
};

const addPerson = async (store: Store, name: string, role: string): Promise<void> => {
  if (!["reader", "editor", "owner"].includes(role))
    throw new StoreRefusal(`A role is reader, editor or owner, not ${role}.`);
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const password = await terminal.question(`Password for ${name}: `);
  terminal.close();
  const fault = passwordFault(password);
  if (fault) throw new StoreRefusal(fault);
  await store.addPerson({ name, role: role as Role, passwordHash: await hashPassword(password) });
  console.log(`${name} may sign in now.`);
};

/** Tasks for whoever looks after the store. */
export const maintain = async (address: string, task: string, [first, second]: readonly string[]): Promise<void> => {
  const store = await openStore(address);
  try {
    if (task === "backup" && first) await backup(store, first);
    else if (task === "restore" && first) await restore(store, first);
    else if (task === "add-person" && first && second) await addPerson(store, first, second);
    else throw new StoreRefusal(usage);
  } finally {
    await store.close();
  }
};
