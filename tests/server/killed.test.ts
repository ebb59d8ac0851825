import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { postgresHere, startPostgres } from "../store/postgres.ts";
import { folder } from "./folder.ts";
import { killRounds } from "./kill/rounds.ts";

// Twelve rounds each; `node scripts/kill-test.mjs` makes it two hundred.
const ROUNDS = 12;

const database = postgresHere ? await startPostgres("on") : undefined;
afterAll(() => database?.stop());

describe("killed while it writes", () => {
  test("SQLite: what was acknowledged is there, and nothing is half there", async () => {
    const { faults, acknowledged } = await killRounds({ name: "SQLite", store: join(folder(), "jobs.sqlite") }, ROUNDS);
    expect(faults).toEqual([]);
    expect(acknowledged).toBeGreaterThan(50);
  });

  test.skipIf(!database)("PostgreSQL: the same, also when the database itself is killed", async () => {
    const { fresh, crash } = database!;
    const { faults, acknowledged } = await killRounds({ name: "PostgreSQL", store: fresh(), crash }, ROUNDS);
    expect(faults).toEqual([]);
    expect(acknowledged).toBeGreaterThan(50);
  });
});
