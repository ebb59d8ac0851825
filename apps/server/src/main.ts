// Keeps the jobs and serves the page. Built into dist/, beside the page it serves.
import { openStore, StoreRefusal } from "@floorworthy/store";
import { fillWithDemo } from "./demo.ts";
import { accountsOf } from "./guard.ts";
import { listen } from "./listen.ts";
import { logTo } from "./log.ts";
import { maintain } from "./maintain.ts";
import { createServer } from "./server.ts";
import { isThisMachine, type Settings, settingsFrom } from "./settings.ts";
import { whenToStop } from "./when-to-stop.ts";

/** How long an answer that is under way may still take when the server stops, ms. */
const LAST_MOMENTS = 10_000;

const serve = async (settings: Settings): Promise<void> => {
  const store = await openStore(settings.store);
  if (!isThisMachine(settings.host) && (await accountsOf(store)) === "open") {
    await store.close();
    throw new StoreRefusal(
      `Nobody has an account yet, so only this machine is served. Make one with "npm run add-person -- NAME owner", then listen on ${settings.host}.`,
    );
  }
  const empty = (await store.list("job")).length + (await store.list("job", "put-away")).length === 0;
  if (settings.demo === "fill" && empty) await fillWithDemo(store, settings.examples, "demo");
  const server = await createServer(store, settings, logTo(settings.log));
  whenToStop(() => {
    setTimeout(() => server.server.closeAllConnections(), LAST_MOMENTS).unref();
    server
      .close()
      .then(() => store.close())
      .then(() => process.exit(0));
  });
  const port = await listen(server, settings.host, settings.port);
  console.log(`Jobs are kept in ${settings.store.replace(/\/\/[^@/]*@/, "//…@")}`);
  console.log(`Floorworthy is at http://${settings.host}:${port}/ (Ctrl+C ends it)`);
};

const [, , task, ...rest] = process.argv;
const settings = settingsFrom(process.env);
try {
  if (task === undefined) await serve(settings);
  else await maintain(settings.store, task, rest);
} catch (error) {
  if (!(error instanceof StoreRefusal)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
