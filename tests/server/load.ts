// Fifty readers and ten editors at the built server for two minutes; see scripts/load-test.mjs.
import { mkdtempSync, readFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { parseArgs } from "node:util";
import { postgresHere, startPostgres } from "../store/postgres.ts";
import { ask } from "./kill/ask.ts";
import { serve } from "./served.ts";

const { values } = parseArgs({
  options: {
    seconds: { type: "string", default: "120" },
    readers: { type: "string", default: "50" },
    editors: { type: "string", default: "10" },
    only: { type: "string" },
  },
});
const seconds = Number(values.seconds);

interface Taken {
  readonly what: string;
  readonly ms: number;
}
interface Figures {
  readonly taken: readonly Taken[];
  readonly errors: readonly string[];
  readonly conflicts: number;
}

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? 0;

/** A person looks again after about a second; the page keeps what is typed 0.7 s after the last key. */
const think = (mean: number) => pause(mean * (0.5 + Math.random()));

const run = async (address: string): Promise<Figures> => {
  const taken: Taken[] = [];
  const errors: string[] = [];
  let conflicts = 0;
  const until = performance.now() + seconds * 1000;
  const timed = async (what: string, method: string, path: string, body?: object) => {
    const begun = performance.now();
    try {
      const reply = await ask(address, method, path, body);
      taken.push({ what, ms: performance.now() - begun });
      if (reply.status >= 400 && reply.status !== 409 && reply.status !== 422) errors.push(`${what}: ${reply.status}`);
      return reply;
    } catch (error) {
      errors.push(`${what}: ${error}`);
      return undefined;
    }
  };
  const jobs: { id: string }[] = (await ask(address, "GET", "/api/jobs")).json();
  const any = () => jobs[Math.floor(Math.random() * jobs.length)]!.id;
  const last = new Map<string, string>();

  const reader = async () => {
    await think(1000);
    while (performance.now() < until) {
      await timed("the list of jobs", "GET", "/api/jobs");
      for (let i = 0; i < 3; i++) await timed("a job", "GET", `/api/jobs/${any()}`);
      if (Math.random() < 0.2) await timed("a job's history", "GET", `/api/jobs/${any()}/revisions`);
      if (Math.random() < 0.02) await timed("a sheet as PDF", "GET", `/api/jobs/${any()}/papers/installer`);
      await think(1000);
    }
  };
  const editor = async (_: unknown, i: number) => {
    const id = jobs[(i % Math.ceil(Number(values.editors) / 2)) % jobs.length]!.id; // two at each job
    let head = (await ask(address, "GET", `/api/jobs/${id}`)).json();
    while (performance.now() < until) {
      await think(900);
      const text = head.text.replace(/\n# touched .*|$/, `\n# touched by ${i} ${Math.random()}`);
      const reply = await timed("a change kept", "PUT", `/api/jobs/${id}`, { basedOn: head.number, text });
      if (reply?.status === 409) {
        conflicts += 1;
        head = reply.json().head;
      } else if (reply?.status === 200) {
        head = reply.json();
        last.set(`${id} ${head.number}`, text);
      }
    }
  };
  await Promise.all([
    ...Array.from({ length: Number(values.readers) }, reader),
    ...Array.from({ length: Number(values.editors) }, editor),
  ]);
  for (const [key, text] of last) {
    const [id, number] = key.split(" ");
    if ((await ask(address, "GET", `/api/jobs/${id}/revisions/${number}`)).json().text !== text)
      errors.push(`revision ${number} of ${id} was kept and is lost`);
  }
  return { taken, errors, conflicts };
};

const report = (name: string, { taken, errors, conflicts }: Figures): void => {
  console.log(
    `${name}: ${taken.length} requests in ${seconds} s (${(taken.length / seconds).toFixed(0)} a second), ` +
      `${conflicts} told of a conflict, ${errors.length === 0 ? "no error" : `${errors.length} ERRORS`}.`,
  );
  for (const what of ["all", ...new Set(taken.map((each) => each.what))]) {
    const ms = taken.flatMap((each) => (what === "all" || each.what === what ? [each.ms] : [])).sort((a, b) => a - b);
    const at = (q: number) => `${quantile(ms, q).toFixed(0).padStart(5)} ms`;
    console.log(
      `  ${what.padEnd(18)} ${String(ms.length).padStart(6)}  p50 ${at(0.5)}  p95 ${at(0.95)}  p99 ${at(0.99)}`,
    );
  }
  for (const error of [...new Set(errors)].slice(0, 10)) console.log(`  ${error}`);
  if (errors.length > 0) process.exitCode = 1;
};

const load = async (name: string, store: string): Promise<void> => {
  const served = await serve(store, { FLOORWORTHY_RATE: "1000000", FLOORWORTHY_DEMO: "fill" });
  report(name, await run(served.address));
  served.process.kill("SIGTERM");
  await served.ended;
};

const [average] = readFileSync("/proc/loadavg", "utf8").split(" ");
console.log(`${cpus().length} cores, load ${average} at the start; everything on this machine, askers included.`);
if (values.only !== "postgres")
  await load("SQLite", join(mkdtempSync(join(tmpdir(), "floorworthy-load-")), "jobs.sqlite"));
if (values.only !== "sqlite" && postgresHere) {
  const database = await startPostgres("on");
  await load("PostgreSQL", database.fresh());
  database.stop();
}
