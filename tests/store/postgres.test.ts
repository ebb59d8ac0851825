import { afterAll, describe, test } from "vitest";
import { storeContract } from "./contract.ts";
import { postgresHere, startPostgres } from "./postgres.ts";

if (postgresHere) {
  const server = await startPostgres();
  afterAll(() => server.stop());
  storeContract("PostgreSQL", server.fresh);
} else describe.skip("the store on PostgreSQL", () => test("PostgreSQL is not installed here", () => undefined));
