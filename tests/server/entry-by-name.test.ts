import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openStore } from "@floorworthy/store";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createServer } from "../../apps/server/src/server.ts";
import { folder } from "./folder.ts";

const examples = join(import.meta.dirname, "../../examples");
const job = readFileSync(join(examples, "records-in-hand.yaml"), "utf8");

let store: Awaited<ReturnType<typeof openStore>>;
let server: Awaited<ReturnType<typeof createServer>>;
beforeEach(async () => {
  store = await openStore(join(folder(), "jobs.sqlite"));
  server = await createServer(store, {
    page: folder({ "index.html": "<!doctype html><title>page</title>" }),
    examples,
    host: "127.0.0.1",
    rate: 10_000,
  });
});
afterEach(async () => {
  await server.close();
  await store.close();
});

const post = async (url: string, payload: object) => {
  const reply = await server.inject({ method: "POST", url, headers: { host: "127.0.0.1:4370" }, payload });
  return { status: reply.statusCode, body: reply.json() };
};
const round = (end: string, readings: readonly object[]) => ({
  id: `0b5f6a3e-3a0d-4c52-9d5e-0d5f0c6a7b${end}`,
  kind: "torque round",
  at: "2026-11-25T10:00:00Z",
  add: [{ list: "visits", entry: { date: "2026-11-25", readings }, by: ["date", "anchor"] }],
});

test("a round of the nuts goes on in a second entry: one visit, each anchor once", async () => {
  const { id } = (await post("/api/jobs", { text: job })).body;
  const first = round("01", [{ anchor: "L1", found: "80 lb-ft" }]);
  expect((await post(`/api/jobs/${id}/entries`, first)).status).toBe(200);
  const more = [
    { anchor: "L1", found: "80 lb-ft", turned: "5 deg" },
    { anchor: "R1", found: "90 lb-ft" },
  ];
  expect((await post(`/api/jobs/${id}/entries`, round("02", more))).status).toBe(200);
  // the first one, sent once more because its reply was lost, changes nothing
  expect((await post(`/api/jobs/${id}/entries`, first)).body.revision).toBe(2);
  const { text, number } = (await store.read(id))!;
  expect(number).toBe(3);
  expect(text.match(/2026-11-25/g)).toHaveLength(1);
  expect(text.match(/anchor: L1/g)).toHaveLength(1);
  expect(text).toContain("turned: 5 deg");
  expect(text).toContain("anchor: R1");
});

test("without the names that join, the same day twice is refused with its reason", async () => {
  const { id } = (await post("/api/jobs", { text: job })).body;
  const plain = (end: string) => ({
    ...round(end, []),
    add: [{ list: "visits", entry: { date: "2026-11-25", readings: [] } }],
  });
  expect((await post(`/api/jobs/${id}/entries`, plain("03"))).status).toBe(200);
  expect(await post(`/api/jobs/${id}/entries`, plain("04"))).toMatchObject({
    status: 422,
    body: { message: expect.stringContaining("stands twice") },
  });
});
