import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { connect } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { openStore } from "@floorworthy/store";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { folder } from "./folder.ts";
import { ask } from "./kill/ask.ts";
import { type Served, serve, serveInVain } from "./served.ts";

const secret = "a-word-nobody-may-read-again";
const log = join(folder(), "log.jsonl");
const place = join(folder(), "jobs.sqlite");
const lines = () =>
  readFileSync(log, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line));

let served: Served;
beforeAll(async () => {
  served = await serve(place, { FLOORWORTHY_LOG: log, FLOORWORTHY_RATE: "400" });
});
afterAll(async () => {
  served.process.kill("SIGKILL");
  await served.ended;
});

/** What the server says to these bytes, until it ends the connection or `ms` are over. */
const raw = (text: string, ms = 3000): Promise<string> =>
  new Promise((done) => {
    const { hostname, port } = new URL(served.address);
    const socket = connect(Number(port), hostname, () => socket.write(text));
    let said = "";
    socket.on("data", (data) => (said += data));
    socket.on("close", () => done(said));
    socket.on("error", () => done(said));
    setTimeout(() => socket.destroy(), ms).unref();
  });
const hostLine = () => `Host: ${new URL(served.address).host}\r\n`;

describe("the log", () => {
  test("has a line of JSON for each request, and never a body, a cookie or a password", async () => {
    await fetch(`${served.address}/api/session`, {
      method: "POST",
      headers: { "content-type": "application/json", cookie: `floorworthy=${secret}`, authorization: secret },
      body: JSON.stringify({ name: secret, password: secret }),
    });
    await ask(served.address, "POST", "/api/jobs", { text: `title: ${secret}\n` });
    await ask(served.address, "GET", "/api/jobs/none");
    await vi.waitFor(() => {
      const noted = lines();
      const made = { method: "POST", url: "/api/jobs", status: 201, by: "this machine", at: expect.any(String) };
      expect(noted).toContainEqual(expect.objectContaining(made));
      const missed = { url: "/api/jobs/none", status: 404, ms: expect.any(Number) };
      expect(noted).toContainEqual(expect.objectContaining(missed));
    });
    expect(readFileSync(log, "utf8")).not.toContain(secret);
  });
});

describe("requests of ill will", () => {
  test("a path out of the page's folder, as bytes a browser would not send", async () => {
    for (const path of [
      "/../package.json",
      "/..%2f..%2fpackage.json",
      "/%2e%2e/server.mjs",
      "/....//server.mjs",
      "/web\\..\\server.mjs",
    ])
      expect(await raw(`GET ${path} HTTP/1.1\r\n${hostLine()}Connection: close\r\n\r\n`)).toMatch(/^HTTP\/1\.1 4\d\d /);
  });

  test("a huge body is refused by its length, before it is sent", async () => {
    const said = await raw(
      `POST /api/jobs HTTP/1.1\r\n${hostLine()}Content-Type: application/json\r\nContent-Length: 9999999999\r\n\r\n{`,
    );
    expect(said).toMatch(/^HTTP\/1\.1 413 /);
  });

  test("a huge body without a length is refused on the way", async () => {
    const part = `10000\r\n${" ".repeat(0x10000)}\r\n`;
    const said = await raw(
      `POST /api/jobs HTTP/1.1\r\n${hostLine()}Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n${part.repeat(20)}`,
    );
    expect(said).toMatch(/^HTTP\/1\.1 413 /);
  });

  test("endless headers and no HTTP at all", async () => {
    expect(await raw(`GET / HTTP/1.1\r\n${hostLine()}X: ${"y".repeat(100_000)}\r\n\r\n`)).toMatch(/^HTTP\/1\.1 431 /);
    expect(await raw("\u0016\u0003\u0001 no HTTP\r\n\r\n")).toMatch(/^HTTP\/1\.1 400 |^$/);
  });

  test("two hundred connections that say nothing keep nobody out", async () => {
    const { hostname, port } = new URL(served.address);
    const idle = Array.from({ length: 200 }, () => connect(Number(port), hostname));
    for (const socket of idle) socket.on("error", () => undefined);
    expect((await ask(served.address, "GET", "/api/health")).status).toBe(200);
    for (const socket of idle) socket.destroy();
  });

  test("who asks too often is told to wait, and nobody is kept out for good", async () => {
    const answers = await Promise.all(Array.from({ length: 450 }, () => ask(served.address, "GET", "/api/lifts")));
    const many = answers.map(({ status }) => status);
    expect(many).toContain(200);
    expect(many).toContain(429);
    expect(new Set(many).size).toBe(2);
    const refused = await fetch(`${served.address}/api/lifts`);
    expect(Number(refused.headers.get("retry-after"))).toBeLessThanOrEqual(60);
    // the page itself still comes whole, however it is asked for, and no spelling of /api slips past
    expect((await ask(served.address, "GET", "/")).status).toBe(200);
    expect((await ask(served.address, "GET", "/%61pi/lifts")).status).toBe(429);
  });
});

describe("listening beyond this machine", () => {
  test("is refused while nobody has an account, in words", async () => {
    const { code, said } = await serveInVain(join(folder(), "jobs.sqlite"), { HOST: "0.0.0.0" });
    expect(code).toBe(2);
    expect(said).toContain("Nobody has an account yet");
    expect(said).toContain("add-person");
  });

  test("is allowed once there is somebody, who is then asked for", async () => {
    const store = join(folder(), "jobs.sqlite");
    const script = process.env.FLOORWORTHY_SERVER ?? "dist/server.mjs";
    const added = spawnSync(process.execPath, [script, "add-person", "Ada", "owner"], {
      env: { ...process.env, FLOORWORTHY_STORE: store },
      input: "a long enough one\n",
      encoding: "utf8",
    });
    expect(added.stdout).toContain("Ada may sign in now.");
    const open = await serve(store, { HOST: "0.0.0.0" });
    const address = open.address.replace("0.0.0.0", "127.0.0.1");
    expect((await ask(address, "GET", "/api/jobs")).status).toBe(401);
    open.process.kill("SIGTERM");
    expect(await open.ended).toBe(0);
  });
});

describe("stopping", () => {
  test.each(["SIGTERM", "SIGINT"] as const)(
    "%s lets what is under way finish, takes nothing new, and ends well",
    async (signal) => {
      const store = join(folder(), "jobs.sqlite");
      const server = await serve(store);
      const { host, hostname, port } = new URL(server.address);
      const body = JSON.stringify({ text: "title: Written while it stopped\n" });
      const socket = connect(Number(port), hostname);
      let said = "";
      socket.on("data", (data) => (said += data));
      const closed = new Promise((done) => socket.once("close", done));
      const head = `POST /api/jobs HTTP/1.1\r\nHost: ${host}\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`;
      socket.write(head + body.slice(0, 10));
      await pause(300);
      server.process.kill(signal);
      await pause(300);
      await expect(fetch(`${server.address}/api/health`)).rejects.toThrow();
      socket.write(body.slice(10));
      await closed;
      expect(said).toMatch(/^HTTP\/1\.1 201 /);
      expect(await server.ended).toBe(0);
      const after = await openStore(store);
      expect((await after.list("job")).map(({ title }) => title)).toContain("Written while it stopped");
      await after.close();
    },
  );
});
