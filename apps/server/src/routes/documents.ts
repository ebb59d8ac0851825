import type { DocumentKind, Store } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { byId, byNumber, changed, conflict, heading, message, newDocument, revision, shelf } from "../shapes.ts";
import { titleOf } from "../title-of.ts";

const none = { message: "There is no such document." };

/** Jobs and lift sheets: the same five addresses for each. */
export const documentRoutes =
  (store: Store, kind: DocumentKind): FastifyPluginAsyncZod =>
  async (server) => {
    const base = kind === "job" ? "/api/jobs" : "/api/lifts";
    const look = { least: "reader" } as const;
    const write = { least: "editor" } as const;
    const tags = [kind === "job" ? "jobs" : "lifts"];

    server.get(
      base,
      {
        config: look,
        schema: {
          tags,
          summary: "the latest revision of each, newest first",
          querystring: z.object({ shelf: shelf.default("open") }),
          response: { 200: z.array(heading) },
        },
      },
      async ({ query }) => [...(await store.list(kind, query.shelf))],
    );

    server.post(
      base,
      {
        config: write,
        schema: { tags, summary: "a new one", body: newDocument, response: { 201: revision } },
      },
      async ({ body, someone }, reply) => {
        const { text, note = "" } = body;
        const made = await store.create(kind, { text, note, title: titleOf(kind, text), by: someone!.name });
        return reply.code(201).send(made);
      },
    );

    server.get(
      `${base}/:id`,
      {
        config: look,
        schema: { tags, summary: "the latest revision", params: byId, response: { 200: revision, 404: message } },
      },
      async ({ params }, reply) => {
        const found = await store.read(params.id);
        return found?.kind === kind ? found : reply.code(404).send(none);
      },
    );

    server.put(
      `${base}/:id`,
      {
        config: write,
        schema: {
          tags,
          summary: "a new revision, where nobody has written since the one it is based on",
          params: byId,
          body: changed,
          response: { 200: revision, 404: message, 409: conflict },
        },
      },
      async ({ params, body, someone }, reply) => {
        const { basedOn, text, note = "", shelf: put = "open" } = body;
        if ((await store.read(params.id))?.kind !== kind) return reply.code(404).send(none);
        const written = { text, note, shelf: put, title: titleOf(kind, text), by: someone!.name };
        const result = await store.save(params.id, basedOn, written);
        if (result.outcome === "saved") return result.revision;
        const { head } = result;
        return reply.code(409).send({ message: `${head.by} has written revision ${head.number} in between.`, head });
      },
    );

    server.get(
      `${base}/:id/revisions`,
      {
        config: look,
        schema: { tags, summary: "every revision, newest first", params: byId, response: { 200: z.array(heading) } },
      },
      async ({ params }) => (await store.history(params.id)).filter((each) => each.kind === kind),
    );

    server.get(
      `${base}/:id/revisions/:number`,
      {
        config: look,
        schema: { tags, summary: "one revision", params: byNumber, response: { 200: revision, 404: message } },
      },
      async ({ params }, reply) => {
        const found = await store.read(params.id, params.number);
        return found?.kind === kind ? found : reply.code(404).send(none);
      },
    );
  };
