import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openStore, type Role } from "@floorworthy/store";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createServer } from "../../apps/server/src/server.ts";
import { folder } from "./folder.ts";

const examples = join(import.meta.dirname, "../../examples");
const page = folder({ "index.html": "<!doctype html><title>page</title>" });

let store: Awaited<ReturnType<typeof openStore>>;
let server: Awaited<ReturnType<typeof createServer>>;
beforeEach(async () => {
  store = await openStore(join(folder(), "jobs.sqlite"));
  server = await createServer(store, { page, examples, host: "127.0.0.1", rate: 10_000 });
});
afterEach(async () => {
  await server.close();
  await store.close();
});

type Method = "GET" | "POST" | "PUT" | "DELETE";
const ask = async (method: Method, url: string, body?: unknown, headers: Record<string, string> = {}) => {
  const reply = await server.inject({
    method,
    url,
    headers: { host: "127.0.0.1:4370", ...headers },
    ...(body !== undefined && { payload: body as object }),
  });
  const json = reply.headers["content-type"]?.toString().includes("json");
  return {
    status: reply.statusCode,
    body: json ? reply.json() : reply.body,
    raw: reply.rawPayload,
    headers: reply.headers,
  };
};

const job = readFileSync(join(examples, "records-in-hand.yaml"), "utf8");
const id1 = "0b5f6a3e-3a0d-4c52-9d5e-0d5f0c6a7b01";
const id2 = "0b5f6a3e-3a0d-4c52-9d5e-0d5f0c6a7b02";

describe("jobs and lifts", () => {
  test("a job is made, changed, listed and put away; every revision stays", async () => {
    const made = await ask("POST", "/api/jobs", { text: job });
    expect(made).toMatchObject({
      status: 201,
      body: { number: 1, kind: "job", title: "Kettleby garage, Wainfell 10 Arch" },
    });
    const { id } = made.body;
    expect(await ask("PUT", `/api/jobs/${id}`, { basedOn: 1, text: "title: Other\n", note: "by hand" })).toMatchObject({
      status: 200,
      body: { number: 2, title: "Other" },
    });
    expect((await ask("GET", `/api/jobs/${id}/revisions`)).body).toHaveLength(2);
    expect((await ask("GET", `/api/jobs/${id}/revisions/1`)).body.text).toBe(job);
    expect((await ask("GET", "/api/jobs")).body).toMatchObject([{ id, number: 2 }]);
    await ask("PUT", `/api/jobs/${id}`, { basedOn: 2, text: job, shelf: "put-away" });
    expect((await ask("GET", "/api/jobs")).body).toEqual([]);
    expect((await ask("GET", "/api/jobs?shelf=put-away")).body).toHaveLength(1);
    expect((await ask("GET", `/api/lifts/${id}`)).status).toBe(404);
  });

  test("the second of two writers is told what stands now", async () => {
    const { id } = (await ask("POST", "/api/jobs", { text: job })).body;
    const both = await Promise.all(
      ["a", "b"].map((title) => ask("PUT", `/api/jobs/${id}`, { basedOn: 1, text: `title: ${title}\n` })),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    const won = both.find(({ status }) => status === 200)!.body;
    expect(both.find(({ status }) => status === 409)!.body.head).toEqual(won);
  });

  test.each([
    ["POST", "/api/jobs", {}],
    ["POST", "/api/jobs", { text: 7 }],
    ["POST", "/api/jobs", { text: "x".repeat(400_001) }],
    ["PUT", "/api/jobs/a", { basedOn: 0, text: "" }],
    ["GET", "/api/jobs/..%2f..%2fetc", undefined],
    ["GET", "/api/jobs/a/revisions/-1", undefined],
    ["GET", "/api/jobs?shelf=all", undefined],
  ] as const)("%s %s with %.40j is refused in words", async (method, url, body) => {
    const reply = await ask(method, url, body);
    expect(reply.status).toBe(400);
    expect(reply.body.message.length).toBeGreaterThan(5);
  });

  test("a body that is no JSON, and one that is too large", async () => {
    expect((await ask("POST", "/api/jobs", "{", { "content-type": "application/json" })).status).toBe(400);
    expect((await ask("POST", "/api/jobs", { text: "x".repeat(1_100_000) })).status).toBe(413);
  });
});

describe("from the field", () => {
  const round = (id: string) => ({
    id,
    kind: "torque round",
    at: "2026-03-01T10:00:00+01:00",
    add: [{ list: "visits", entry: { date: "2026-03-01", readings: [{ anchor: "L1", found: "45 lb-ft" }] } }],
  });

  test("an entry is taken in once, as a revision that can be read", async () => {
    const { id } = (await ask("POST", "/api/jobs", { text: job })).body;
    const first = await ask("POST", `/api/jobs/${id}/entries`, round(id1));
    expect(first).toMatchObject({ status: 200, body: { revision: 2, by: "this machine" } });
    expect((await ask("POST", `/api/jobs/${id}/entries`, round(id1))).body).toEqual(first.body);
    expect((await ask("GET", `/api/jobs/${id}`)).body.text).toContain("45 lb-ft");
    expect((await ask("GET", `/api/jobs/${id}/revisions`)).body).toHaveLength(2);
  });

  test("an entry that would break the job is refused with the mistake, and nothing is kept", async () => {
    const { id } = (await ask("POST", "/api/jobs", { text: job })).body;
    const bad = { ...round(id2), add: [{ list: "visits", entry: { date: "2026-13-45" } }] };
    const reply = await ask("POST", `/api/jobs/${id}/entries`, bad);
    expect(reply.status).toBe(422);
    expect(reply.body.message).toMatch(/visits\[\d+\]\.date/);
    expect((await ask("GET", `/api/jobs/${id}/entries`)).body).toEqual([]);
    expect((await ask("POST", "/api/jobs/none/entries", round(id2))).status).toBe(404);
  });

  const upload = (bytes: string, name: string, mime: string) => {
    const edge = "edge-of-part";
    const head = `--${edge}\r\ncontent-disposition: form-data; name="note"\r\n\r\nhole R4\r\n--${edge}\r\ncontent-disposition: form-data; name="file"; filename="${name}"\r\ncontent-type: ${mime}\r\n\r\n`;
    return [`${head}${bytes}\r\n--${edge}--\r\n`, { "content-type": `multipart/form-data; boundary=${edge}` }] as const;
  };

  test("a photograph comes back as a picture, anything else as a download", async () => {
    const { id } = (await ask("POST", "/api/jobs", { text: job })).body;
    const photo = await ask("POST", `/api/jobs/${id}/attachments`, ...upload("bytes", "../R4.jpg", "image/jpeg"));
    expect(photo).toMatchObject({ status: 201, body: { name: "R4.jpg", note: "hole R4", size: 5 } });
    const back = await ask("GET", `/api/attachments/${photo.body.hash}`);
    expect(back.raw.toString()).toBe("bytes");
    expect(back.headers["content-type"]).toBe("image/jpeg");
    const page = await ask("POST", `/api/jobs/${id}/attachments`, ...upload("<script>", "a.html", "text/html"));
    const served = await ask("GET", `/api/attachments/${page.body.hash}`);
    expect(served.headers["content-type"]).toBe("application/octet-stream");
    expect(served.headers["content-disposition"]).toBe("attachment");
    expect((await ask("GET", `/api/jobs/${id}/attachments`)).body).toHaveLength(2);
    expect((await ask("GET", `/api/attachments/${"0".repeat(64)}`)).status).toBe(404);
    expect((await ask("POST", `/api/jobs/${id}/attachments`, { a: 1 })).status).toBe(415);
  });

  test("a job is exported and taken in again", async () => {
    const { id } = (await ask("POST", "/api/jobs", { text: job })).body;
    const { raw } = await ask("GET", `/api/jobs/${id}/export`);
    const gzip = { "content-type": "application/gzip" };
    const taken = await ask("POST", "/api/import", raw, gzip);
    expect(taken.status).toBe(201);
    expect(taken.body.id).not.toBe(id);
    expect((await ask("GET", `/api/jobs/${taken.body.id}`)).body.text).toBe(job);
    expect((await ask("POST", "/api/import", Buffer.from("nothing"), gzip)).status).toBe(422);
    expect((await ask("POST", "/api/import", { a: 1 })).status).toBe(415);
    expect((await ask("GET", "/api/jobs/none/export")).status).toBe(404);
    expect((await ask("GET", "/api/backup")).headers["content-type"]).toBe("application/gzip");
  });
});

describe("papers", () => {
  test("a sheet comes as PDF, SVG and DXF; a refused one says why", async () => {
    await ask("POST", "/api/demo");
    const at = "/api/jobs/records-in-hand/papers/contractor";
    const pdf = await ask("GET", `${at}?date=2026-01-02`);
    expect(pdf.headers["content-type"]).toBe("application/pdf");
    expect(pdf.raw.subarray(0, 5).toString()).toBe("%PDF-");
    expect((await ask("GET", `${at}?format=svg&units=si`)).body).toContain("<svg");
    expect((await ask("GET", `${at}?format=dxf`)).raw.toString()).toContain("LWPOLYLINE");
    const stopped = await ask("GET", "/api/jobs/stamp-at-the-door/papers/contractor");
    expect(stopped.status).toBe(422);
    expect(stopped.body.message).toContain("post-tensioned");
    expect((await ask("GET", "/api/jobs/records-in-hand/papers/none")).status).toBe(404);
    expect((await ask("GET", `${at}?date=tomorrow`)).status).toBe(400);
    expect((await ask("GET", "/api/papers")).body.map(({ name }: { name: string }) => name)).toContain("contractor");
  });
});

describe("people", () => {
  const password = "a long enough one";
  const add = (name: string, role: Role, headers = {}) => ask("POST", "/api/people", { name, role, password }, headers);
  const signedIn = async (name: string) => {
    const reply = await ask("POST", "/api/session", { name, password });
    expect(reply.status).toBe(200);
    const cookie = String(reply.headers["set-cookie"]);
    expect(cookie).toMatch(/HttpOnly/);
    expect(cookie).toMatch(/SameSite=Strict/);
    return { cookie: cookie.split(";")[0]! };
  };

  test("on this machine nobody signs in until there is somebody; the first is an owner", async () => {
    expect((await ask("GET", "/api/session")).body).toEqual({
      accounts: "open",
      person: { name: "this machine", role: "owner" },
    });
    expect((await add("Rae", "reader")).status).toBe(422);
    expect((await ask("POST", "/api/people", { name: "Ada", role: "owner", password: "short" })).status).toBe(422);
    expect((await add("Ada", "owner")).status).toBe(201);
    expect((await ask("GET", "/api/jobs")).status).toBe(401);
    expect((await ask("GET", "/api/session")).body).toEqual({ accounts: "accounts" });
  });

  test("each role does what it may and no more", async () => {
    await add("Ada", "owner");
    const ada = await signedIn("ada");
    await add("Edo", "editor", ada);
    await add("Rae", "reader", ada);
    const [edo, rae] = [await signedIn("Edo"), await signedIn("Rae")];
    const { id } = (await ask("POST", "/api/jobs", { text: job }, edo)).body;
    expect((await ask("GET", `/api/jobs/${id}`, undefined, rae)).body.by).toBe("Edo");
    expect((await ask("PUT", `/api/jobs/${id}`, { basedOn: 1, text: "" }, rae)).status).toBe(403);
    expect((await ask("POST", "/api/jobs", { text: job }, rae)).status).toBe(403);
    expect((await ask("GET", "/api/backup", undefined, edo)).status).toBe(403);
    expect((await ask("GET", "/api/people", undefined, edo)).status).toBe(403);
    expect((await ask("GET", "/api/people", undefined, ada)).body).toHaveLength(3);
    expect(JSON.stringify((await ask("GET", "/api/people", undefined, ada)).body)).not.toContain("argon2");
    await ask("DELETE", "/api/session", undefined, edo);
    expect((await ask("GET", "/api/jobs", undefined, edo)).status).toBe(401);
  });

  test("a wrong name and a wrong password sound alike, and guessing is slowed", async () => {
    await add("Ada", "owner");
    const wrong = await ask("POST", "/api/session", { name: "Ada", password: "wrong wrong wrong" });
    expect(wrong).toMatchObject({
      status: 401,
      body: (await ask("POST", "/api/session", { name: "Eve", password })).body,
    });
    const many = [];
    for (let i = 0; i < 12; i++)
      many.push((await ask("POST", "/api/session", { name: "Ada", password: "guess" })).status);
    expect(many).toContain(429);
  });

  test("another site's page may not write", async () =>
    expect((await ask("POST", "/api/jobs", { text: job }, { "sec-fetch-site": "cross-site" })).status).toBe(403));
});

describe("the demo and the description", () => {
  test("an empty store takes the demo once, with lifts written out", async () => {
    const { put } = (await ask("POST", "/api/demo")).body;
    expect(put).toBeGreaterThan(7);
    expect((await ask("POST", "/api/demo")).body.put).toBe(0);
    expect((await ask("GET", "/api/lifts")).body.length).toBeGreaterThan(3);
    for (const { id } of (await ask("GET", "/api/jobs")).body)
      expect((await ask("GET", `/api/jobs/${id}`)).body.text).not.toMatch(/file: lifts/);
  });

  test("the description names every address, and the answers are as described", async () => {
    const description = (await ask("GET", "/api/openapi.json")).body;
    expect(description.openapi).toMatch(/^3\.1/);
    expect(Object.keys(description.paths).sort()).toEqual([
      "/api/attachments/{hash}",
      "/api/backup",
      "/api/demo",
      "/api/import",
      "/api/jobs",
      "/api/jobs/{id}",
      "/api/jobs/{id}/attachments",
      "/api/jobs/{id}/entries",
      "/api/jobs/{id}/export",
      "/api/jobs/{id}/papers/{name}",
      "/api/jobs/{id}/revisions",
      "/api/jobs/{id}/revisions/{number}",
      "/api/lifts",
      "/api/lifts/{id}",
      "/api/lifts/{id}/manuals",
      "/api/lifts/{id}/manuals/{hash}",
      "/api/lifts/{id}/manuals/{hash}/pages/{page}",
      "/api/lifts/{id}/manuals/{hash}/pictures",
      "/api/lifts/{id}/revisions",
      "/api/lifts/{id}/revisions/{number}",
      "/api/papers",
      "/api/people",
      "/api/people/{id}/role",
      "/api/session",
    ]);
    await ask("POST", "/api/demo");
    const ajv = new Ajv2020({ strict: false, validateFormats: false });
    for (const [path, url] of [
      ["/api/jobs", "/api/jobs"],
      ["/api/lifts", "/api/lifts"],
      ["/api/jobs/{id}", "/api/jobs/records-in-hand"],
      ["/api/session", "/api/session"],
      ["/api/demo", "/api/demo"],
    ] as const) {
      const { schema } = description.paths[path].get.responses["200"].content["application/json"];
      const check = ajv.compile(schema);
      expect(check((await ask("GET", url)).body), JSON.stringify(check.errors)).toBe(true);
    }
  });
});
