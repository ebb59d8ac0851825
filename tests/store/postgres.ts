import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { freePort } from "../server/served.ts";

const versions = "/usr/lib/postgresql";
const bin = existsSync(versions) ? join(versions, readdirSync(versions).sort().at(-1) ?? "", "bin") : undefined;

/** Debian's PostgreSQL is here. `.ci/run` installs it; elsewhere its half of the contract says that it was not run. */
export const postgresHere = bin !== undefined;

/** As the user postgres where we are root, which PostgreSQL refuses to be. */
const run = (folder: string, program: string, args: readonly string[]): void => {
  const root = process.getuid?.() === 0;
  const command = root ? "setpriv" : join(bin!, program);
  const before = root ? ["--reuid=postgres", "--regid=postgres", "--init-groups", join(bin!, program)] : [];
  const { status, stderr } = spawnSync(command, [...before, ...args], {
    cwd: folder,
    encoding: "utf8",
    env: { ...process.env, HOME: folder },
    stdio: ["ignore", "ignore", "pipe"],
  });
  if (status !== 0) throw new Error(`${program}: ${stderr}`);
};

/** A server of its own in a throw-away folder; `fresh` gives an empty database. */
export const startPostgres = async (durability: "off" | "on" = "off") => {
  const folder = mkdtempSync(join(tmpdir(), "floorworthy-pg-"));
  if (process.getuid?.() === 0) spawnSync("chown", ["postgres", folder]);
  const port = await freePort();
  run(folder, "initdb", [
    "-D",
    `${folder}/data`,
    "-U",
    "app",
    "-A",
    "trust",
    "-E",
    "UTF8",
    "--no-sync",
    "--locale=C.UTF-8",
  ]);
  const options = `-p ${port} -k ${folder} -c listen_addresses=127.0.0.1 -c fsync=${durability}`;
  const start = () =>
    run(folder, "pg_ctl", ["-D", `${folder}/data`, "-w", "-l", `${folder}/log`, "-o", options, "start"]);
  start();
  let made = 0;
  return {
    fresh: (): string => {
      const name = `bay${++made}`;
      run(folder, "createdb", ["-h", "127.0.0.1", "-p", String(port), "-U", "app", name]);
      return `postgres://app@127.0.0.1:${port}/${name}`;
    },
    /** ends it as a crash would, and starts it again */
    crash: async (): Promise<void> => {
      const pid = Number(readFileSync(`${folder}/data/postmaster.pid`, "utf8").split("\n")[0]);
      process.kill(pid, "SIGKILL");
      // what it left running ends by itself, and only then may it start
      for (let tries = 1; ; tries++)
        try {
          await pause(200);
          return start();
        } catch (error) {
          if (tries >= 50) throw error;
        }
    },
    stop: (): void => {
      run(folder, "pg_ctl", ["-D", `${folder}/data`, "-m", "fast", "-w", "stop"]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
