import { withOwnLift } from "@floorworthy/job/editing";
import type { Store } from "@floorworthy/store";
import { listExamples, readExample, readLiftSheets } from "./examples.ts";
import { titleOf } from "./title-of.ts";

/** Puts the demo jobs and lift sheets into the store; those that are there already stay as they are. */
export const fillWithDemo = async (store: Store, folder: string, by: string): Promise<number> => {
  const sheets = await readLiftSheets(folder);
  const there = new Set([...(await store.list("job")), ...(await store.list("job", "put-away"))].map(({ id }) => id));
  const lifts = new Set((await store.list("lift")).map(({ id }) => id));
  let put = 0;
  for (const [name, text] of Object.entries(sheets)) {
    const id = name.replace(/^.*\//, "").replace(/\.[^.]+$/, "");
    if (lifts.has(id)) continue;
    await store.create("lift", { id, text, title: titleOf("lift", text), note: "demo", by });
  }
  // the last is the newest and stands first in the list, as the files stand in their folder
  for (const { id } of [...(await listExamples(folder))].reverse()) {
    const text = there.has(id) ? undefined : await readExample(folder, id);
    if (text === undefined) continue;
    const own = withOwnLift(text, (name) => sheets[name]);
    await store.create("job", { id, text: own, title: titleOf("job", own), note: "demo", by });
    put += 1;
  }
  return put;
};
