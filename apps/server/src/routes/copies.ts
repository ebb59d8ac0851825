import { Readable } from "node:stream";
import { type Store, StoreRefusal } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { byId, message } from "../shapes.ts";

const LARGEST = 200_000_000;

/** Whole copies: one job with all that belongs to it, or everything. A backup is put back with `npm run restore`. */
export const copyRoutes =
  (store: Store): FastifyPluginAsyncZod =>
  async (server) => {
    const tags = ["copies"];
    server.addContentTypeParser("application/gzip", (_request, body, done) => done(null, body));

    server.get(
      "/api/jobs/:id/export",
      {
        config: { least: "reader" },
        schema: { tags, summary: "the job, its history and its files as one file", params: byId },
      },
      async ({ params }, reply) => {
        if (!(await store.read(params.id))) return reply.code(404).send({ message: "There is no such document." });
        return reply
          .type("application/gzip")
          .header("content-disposition", `attachment; filename="${params.id}.floorworthy.gz"`)
          .send(Readable.from(store.exportDocument(params.id)));
      },
    );

    server.post(
      "/api/import",
      {
        config: { least: "editor" },
        bodyLimit: LARGEST,
        schema: {
          tags,
          summary: "takes in a job that was exported",
          consumes: ["application/gzip"],
          response: { 201: z.object({ id: z.string() }), 415: message, 422: message },
        },
      },
      async ({ body }, reply) => {
        if (!(body instanceof Readable)) return reply.code(415).send({ message: "Send the file as application/gzip." });
        return reply.code(201).send({ id: await store.importDocument(limited(body, LARGEST)) });
      },
    );

    server.get(
      "/api/backup",
      { config: { least: "owner" }, schema: { tags, summary: "everything, as it stands now, as one file" } },
      async (_request, reply) =>
        reply
          .type("application/gzip")
          .header("content-disposition", 'attachment; filename="backup.floorworthy.gz"')
          .send(Readable.from(store.backup())),
    );
  };

async function* limited(body: AsyncIterable<Uint8Array>, most: number): AsyncIterable<Uint8Array> {
  let size = 0;
  for await (const part of body) {
    size += part.length;
    if (size > most) throw new StoreRefusal("The file is too large.");
    yield part;
  }
}
