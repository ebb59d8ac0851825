import { fileURLToPath } from "node:url";

/** What the environment says. */
export interface Settings {
  /** a file for SQLite, or postgres://… */
  readonly store: string;
  readonly host: string;
  readonly port: number;
  /** folder of the demo jobs */
  readonly examples: string;
  /** folder of the built page */
  readonly page: string;
  /** whether a new, empty store gets the demo jobs at once */
  readonly demo: "fill" | "offer";
  /** requests a minute from one address */
  readonly rate: number;
  /** where the log goes, as logTo takes it */
  readonly log: string;
}

const near = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const count = (asked: string | undefined, usual: number, most: number): number => {
  const number = Number(asked ?? usual);
  return Number.isInteger(number) && number > 0 && number <= most ? number : usual;
};

export const wantedPort = (asked: string | undefined): number => count(asked, 4370, 65_535);

export const settingsFrom = (env: Readonly<Record<string, string | undefined>>): Settings => ({
  store: env.FLOORWORTHY_STORE ?? "data/jobs.sqlite",
  host: env.HOST ?? "127.0.0.1",
  port: wantedPort(env.PORT),
  examples: env.FLOORWORTHY_JOBS ?? near("../examples/"),
  page: near("web/"),
  demo: env.FLOORWORTHY_DEMO === "fill" ? "fill" : "offer",
  rate: count(env.FLOORWORTHY_RATE, 1200, 1_000_000),
  log: env.FLOORWORTHY_LOG ?? "",
});

export const isThisMachine = (host: string): boolean => ["127.0.0.1", "localhost", "::1"].includes(host);
