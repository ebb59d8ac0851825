import { setTimeout as pause } from "node:timers/promises";
import { beginServing, serve } from "../served.ts";
import { ask } from "./ask.ts";
import { auditAll, auditRound, sendAgain } from "./audit.ts";
import { acknowledged, type Ledger, newLedger } from "./ledger.ts";
import { jobText, writeUntilKilled } from "./writers.ts";

export interface Place {
  readonly name: string;
  /** what the server is told as its store */
  readonly store: string;
  /** ends the database itself as a crash would and starts it again; a file has none */
  readonly crash?: () => Promise<void>;
}

export interface KillFigures {
  readonly rounds: number;
  readonly whileStarting: number;
  readonly databaseCrashes: number;
  readonly acknowledged: number;
  readonly unanswered: number;
  readonly conflicts: number;
  readonly faults: readonly string[];
}

const WRITERS = 6;
const env = { FLOORWORTHY_RATE: "1000000" };

/** The database is killed under a server at work, which must outlive it and find it again. */
const crashDatabase = async (place: Place, ledger: Ledger, shared: readonly string[]): Promise<string[]> => {
  const served = await serve(place.store, env);
  const over = new AbortController();
  const writing = writers({ address: served.address, ledger, shared, until: over.signal });
  await pause(50 + Math.random() * 600);
  await place.crash?.();
  over.abort();
  await writing;
  const faults = await findsItAgain(served.address);
  if (served.process.exitCode !== null) faults.push("the server ended with its database");
  served.process.kill("SIGKILL");
  await served.ended;
  return faults;
};

const findsItAgain = async (address: string): Promise<string[]> => {
  for (let tries = 0; tries < 20; tries++) {
    const { status } = await ask(address, "GET", "/api/health").catch(() => ({ status: 0 }));
    if (status === 200) return [];
    await pause(200);
  }
  return ["the server did not find its database again"];
};

const writers = (writer: Parameters<typeof writeUntilKilled>[0]) =>
  Promise.all(Array.from({ length: WRITERS }, () => writeUntilKilled(writer)));

const killServer = async (place: Place, ledger: Ledger, shared: readonly string[]): Promise<void> => {
  const served = await serve(place.store, env);
  const writing = writers({ address: served.address, ledger, shared, until: new AbortController().signal });
  await pause(20 + Math.random() * 1000);
  served.process.kill("SIGKILL");
  await Promise.all([served.ended, writing]);
};

/** Killed before it listens, perhaps while it makes its tables. */
const killWhileStarting = async (place: Place): Promise<void> => {
  const child = await beginServing(place.store, env);
  await pause(Math.random() * 1500);
  child.process.kill("SIGKILL");
  await child.ended;
};

const addTo = (all: Ledger, { revisions, entries, files, documents, counts }: Ledger): void => {
  for (const [key, revision] of revisions) all.revisions.set(key, revision);
  for (const [id, document] of entries) all.entries.set(id, document);
  for (const [hash, document] of files) all.files.set(hash, document);
  for (const id of documents) all.documents.add(id);
  all.counts.conflicts += counts.conflicts;
  all.counts.unanswered += counts.unanswered;
};

/** Kills, starts again and looks, so many times; in the end everything ever acknowledged is looked at once more. */
export const killRounds = async (
  place: Place,
  rounds: number,
  tell: (line: string) => void = () => undefined,
): Promise<KillFigures> => {
  const all = newLedger();
  const faults: string[] = [];
  let shared: string[] = [];
  let [whileStarting, databaseCrashes] = [0, 0];
  for (let round = 1; round <= rounds && faults.length < 20; round++) {
    const ledger = newLedger();
    if (round % 10 === 1) {
      whileStarting += 1;
      await killWhileStarting(place);
    } else if (place.crash && round % 5 === 0) {
      databaseCrashes += 1;
      faults.push(...(await crashDatabase(place, ledger, shared)));
    } else await killServer(place, ledger, shared);

    const served = await serve(place.store, env);
    faults.push(...(await sendAgain(served.address, ledger)));
    faults.push(...(await auditRound(served.address, ledger, shared)));
    addTo(all, ledger);
    if (round === rounds) faults.push(...(await auditAll(served.address, all)));
    const made = [jobText(), jobText()].map((text) => ask(served.address, "POST", "/api/jobs", { text }));
    shared = (await Promise.all(made)).map(({ json }) => json().id);
    served.process.kill("SIGKILL");
    await served.ended;
    tell(`${place.name}: round ${round}, ${acknowledged(all)} writes acknowledged, ${faults.length} faults`);
  }
  const { conflicts, unanswered } = all.counts;
  return { rounds, whileStarting, databaseCrashes, acknowledged: acknowledged(all), unanswered, conflicts, faults };
};
