import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";

/** The server as it is built; another build by FLOORWORTHY_SERVER. */
const built = process.env.FLOORWORTHY_SERVER ?? fileURLToPath(new URL("../../dist/server.mjs", import.meta.url));

export const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer();
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address() as { port: number };
      server.close(() => done(port));
    });
  });

export interface Served {
  readonly address: string;
  readonly process: ChildProcess;
  /** what it wrote, both ways */
  readonly said: () => string;
  /** its exit code, once it has ended */
  readonly ended: Promise<number | string>;
}

const begin = async (store: string, env: Readonly<Record<string, string>>) => {
  if (!existsSync(built)) throw new Error(`${built} is not there: run "npm run build" first.`);
  const child = spawn(process.execPath, [built], {
    env: { ...process.env, npm_lifecycle_event: "", FLOORWORTHY_STORE: store, PORT: String(await freePort()), ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (words) => (said += words));
  const ended = new Promise<number | string>((done) =>
    child.once("exit", (code, signal) => done(code ?? signal ?? "gone")),
  );
  return { process: child, said: () => said, ended };
};

/** Starts the built server as a process of its own and waits until it listens. */
export const serve = async (store: string, env: Readonly<Record<string, string>> = {}): Promise<Served> => {
  const child = await begin(store, env);
  const address = await new Promise<string>((done, fail) => {
    child.process.stdout?.on("data", () => {
      const found = /http:\/\/\S+:\d+/.exec(child.said())?.[0];
      if (found) done(found);
    });
    child.ended.then((code) => fail(new Error(`the server ended (${code}) before it listened:\n${child.said()}`)));
  });
  return { ...child, address };
};

/** Starts it and waits until it ends by itself. */
export const serveInVain = async (store: string, env: Readonly<Record<string, string>>) => {
  const child = await begin(store, env);
  return { code: await child.ended, said: child.said() };
};

/** Starts it and does not wait. */
export const beginServing = begin;
