import { join } from "node:path";
import { openStore } from "@floorworthy/store";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createServer } from "../../apps/server/src/server.ts";
import { folder } from "./folder.ts";

const page = folder({ "index.html": "<!doctype html><title>page</title>" });
const store = await openStore(join(folder(), "jobs.sqlite"));
const server = await createServer(store, { page, examples: page, host: "127.0.0.1", rate: 10_000 });
const host = "127.0.0.1:4370";
beforeAll(async () => {
  await store.create("job", { id: "bay", title: "A bay", text: "title: A bay\n", by: "Ada" });
});
afterAll(async () => {
  await server.close();
  await store.close();
});

describe("another site's page", () => {
  test.each([
    [{ "sec-fetch-site": "cross-site" }, 403],
    [{ "sec-fetch-site": "same-site" }, 403],
    [{ origin: "http://example.org" }, 403],
    [{ origin: "http://127.0.0.1:4371" }, 403],
    [{ origin: "null" }, 403],
    [{ origin: `http://${host}`, "sec-fetch-site": "same-origin" }, 201],
    [{}, 201],
  ])("with %j is answered %i", async (headers, status) => {
    const reply = await server.inject({
      method: "POST",
      url: "/api/jobs",
      headers: { host, ...headers },
      payload: { text: "title: B\n" },
    });
    expect(reply.statusCode).toBe(status);
  });
});

describe("once somebody has an account", () => {
  beforeAll(async () => {
    await store.addPerson({ name: "Ada", role: "owner", passwordHash: "none" });
  });

  // an address may be written in many ways; whichever reaches a route has to pass the same door
  const ways = (path: string): readonly string[] => [
    path,
    path.replace("/api", "/%61pi"),
    path.replace("/api", "/a%70%69"),
    path.replace("/api", "//api"),
    path.replace("/api", "/./api"),
    path.replace("/api", "/x/../api"),
    path.replace("/api/", "/api//"),
    path.replace("/api/", "/api%2f"),
    path.replace("/api", "/API"),
    `http://${host}${path}`,
    `http://elsewhere${path}`,
    `${path}?a=/api/session`,
    `${path};a`,
    `${path}/`,
  ];
  const asked = [
    ["GET", "/api/jobs"],
    ["GET", "/api/jobs/bay"],
    ["GET", "/api/jobs/bay/revisions/1"],
    ["GET", "/api/jobs/bay/export"],
    ["GET", "/api/backup"],
    ["GET", "/api/people"],
    ["GET", "/api/demo"],
    ["GET", "/api/examples/bay"],
    ["POST", "/api/jobs"],
    ["POST", "/api/people"],
    ["PUT", "/api/jobs/bay"],
    ["HEAD", "/api/jobs"],
  ] as const;
  test.each(asked.flatMap(([method, path]) => ways(path).map((url) => [method, url] as const)))(
    "nobody passes unknown: %s %s",
    async (method, url) => {
      const body = method === "GET" || method === "HEAD" ? {} : { payload: { text: "title: C\n" } };
      const reply = await server.inject({ method, url, headers: { host }, ...body });
      expect([400, 401, 403, 404, 405]).toContain(reply.statusCode);
      expect(reply.body).not.toContain("A bay");
    },
  );

  test("every address of the description is shut, but for signing in and out", async () => {
    const description = (await server.inject({ url: "/api/openapi.json", headers: { host } })).json();
    const open: string[] = [];
    for (const [path, methods] of Object.entries<object>(description.paths))
      for (const method of Object.keys(methods)) {
        const url = path
          .replace("{hash}", "0".repeat(64))
          .replace("{number}", "1")
          .replace(/\{\w+\}/g, "bay");
        const reply = await server.inject({ method: method.toUpperCase() as "GET", url, headers: { host } });
        if (reply.statusCode !== 401) open.push(`${method} ${path}`);
      }
    expect(open.sort()).toEqual(["delete /api/session", "get /api/session", "post /api/session"]);
  });
});
