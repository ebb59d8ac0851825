import { createServer as createPlainServer } from "node:http";
import { join } from "node:path";
import { openStore } from "@floorworthy/store";
import { afterAll, describe, expect, test } from "vitest";
import { listen } from "../../apps/server/src/listen.ts";
import { createServer } from "../../apps/server/src/server.ts";
import { wantedPort } from "../../apps/server/src/settings.ts";
import { folder } from "./folder.ts";

const page = folder({ "index.html": "<!doctype html><title>page</title>" });
const job = "# Records kept\nfloorworthy: 1\ntitle: 'A bay'\n";
const examples = folder({
  "b.yaml": job,
  "a.json": '{\n"floorworthy": 1,\n"title": "B"\n}',
  "lift.yaml": "lift:\n  name: L\n",
  "x.txt": "no",
});
const store = await openStore(join(folder(), "jobs.sqlite"));
const settings = { page, examples, host: "127.0.0.1", rate: 10_000 };
const server = await createServer(store, settings);
afterAll(async () => {
  await server.close();
  await store.close();
});

const get = (url: string, headers = {}) => server.inject({ url, headers: { host: "127.0.0.1:4370", ...headers } });

describe("the server", () => {
  test("says it is well", async () => expect((await get("/api/health")).json()).toEqual({ status: "ok" }));

  test("lists job files by name, with title and first comment", async () =>
    expect((await get("/api/examples")).json()).toEqual([
      { id: "a", title: "B", note: "" },
      { id: "b", title: "A bay", note: "Records kept" },
    ]));

  test("hands out a listed job as text", async () => {
    const reply = await get("/api/examples/b");
    expect(reply.body).toBe(job);
    expect(reply.headers["content-type"]).toMatch(/^text\/plain/);
  });

  test("hands out lift sheets by name", async () =>
    expect((await get("/api/sheets")).json()).toEqual({ "lift.yaml": "lift:\n  name: L\n" }));

  test.each(["x", "x.txt", "..%2F..%2Fetc%2Fpasswd", "%2Fetc%2Fpasswd", "b.yaml", "__proto__"])(
    "knows no job %s",
    async (id) => expect([400, 404]).toContain((await get(`/api/examples/${id}`)).statusCode),
  );

  test.each(["/../package.json", "/%2e%2e/package.json", "/..%5cpackage.json"])(
    "serves nothing outside: %s",
    async (url) => expect((await get(url)).statusCode).toBeGreaterThanOrEqual(400),
  );

  test.each(["/", "/api/health", "/nowhere"])("safe headers on %s", async (url) => {
    const { headers } = await get(url);
    expect(headers["content-security-policy"]).toContain("default-src 'none'");
    expect(headers["content-security-policy"]).not.toContain("unsafe");
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["referrer-policy"]).toBe("no-referrer");
  });

  test.each(["example.org", "127.0.0.1.example.org", "192.168.1.2:4370"])(
    "does not answer to the name %j",
    async (host) => expect((await get("/api/examples", { host })).statusCode).toBe(421),
  );
});

describe("listening", () => {
  test("takes the next port when one is taken, on this machine only", async () => {
    const other = createPlainServer();
    await new Promise<void>((done) => other.listen(0, "127.0.0.1", done));
    const taken = (other.address() as { port: number }).port;
    const second = await createServer(store, settings);
    const port = await listen(second, "127.0.0.1", taken);
    expect(port).toBeGreaterThan(taken);
    expect(second.addresses().map((at) => (typeof at === "string" ? at : at.address))).toEqual(["127.0.0.1"]);
    await second.close();
    other.close();
  });

  test.each([
    [undefined, 4370],
    ["5000", 5000],
    ["many", 4370],
    ["-1", 4370],
    ["70000", 4370],
  ])("PORT=%s means %i", (asked, port) => expect(wantedPort(asked)).toBe(port));
});
