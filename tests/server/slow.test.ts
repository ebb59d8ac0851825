import { connect } from "node:net";
import { join } from "node:path";
import { openStore } from "@floorworthy/store";
import { afterAll, expect, test } from "vitest";
import { createServer } from "../../apps/server/src/server.ts";
import { folder } from "./folder.ts";

const page = folder({ "index.html": "<!doctype html><title>page</title>" });
const store = await openStore(join(folder(), "jobs.sqlite"));
const settings = { page, examples: page, host: "127.0.0.1", rate: 10_000 };
const server = await createServer(store, settings, false, { request: 1500, head: 400, silence: 700 });
await server.listen({ host: "127.0.0.1", port: 0 });
const { port } = server.server.address() as { port: number };
afterAll(async () => {
  await server.close();
  await store.close();
});

/** How long the connection stood, ms, when these parts come one every 100 ms, and what was answered. */
const drip = (head: string, part: string): Promise<{ readonly ms: number; readonly said: string }> =>
  new Promise((done) => {
    const begun = performance.now();
    const socket = connect(port, "127.0.0.1", () => socket.write(head));
    let said = "";
    const drops = setInterval(() => part !== "" && socket.write(part), 100);
    socket.on("data", (data) => (said += data));
    socket.on("error", () => undefined);
    socket.on("close", () => {
      clearInterval(drops);
      done({ ms: performance.now() - begun, said });
    });
  });

const post = `POST /api/jobs HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: application/json\r\nContent-Length: 5000\r\n\r\n`;

test.each([
  ["a head that never ends", "GET / HTTP/1.1\r\n", "X-Slow: y\r\n"],
  ["a body a byte at a time", post, " "],
  ["a body that stops coming", post, ""],
  ["a connection that says nothing", "", ""],
])("%s is given up", async (_, head, part) => {
  const { ms, said } = await drip(head, part);
  expect(ms).toBeLessThan(5000);
  expect(said === "" || /^HTTP\/1\.1 408 /.test(said)).toBe(true);
});

test("others are served meanwhile, and nothing was written", async () => {
  const slow = drip(post, " ");
  expect((await fetch(`http://127.0.0.1:${port}/api/health`)).status).toBe(200);
  await slow;
  expect(await store.list("job")).toEqual([]);
});
