import type { Store } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import type { ReadingDesk } from "../manuals/reading-desk.ts";
import { byHash, byId, message } from "../shapes.ts";

const LARGEST = 60_000_000;
const byManual = byId.extend(byHash.shape);
const side = z.number().finite().min(-10_000).max(10_000);
const box = z.object({ x: side, y: side, width: side.positive(), height: side.positive() });

/** The maker's manual beside its lift: brought, read, shown page by page, its lines kept as pictures. */
export const manualRoutes =
  (store: Store, desk: ReadingDesk): FastifyPluginAsyncZod =>
  async (server) => {
    const tags = ["manuals"];

    server.post(
      "/api/lifts/:id/manuals",
      {
        config: { least: "editor" },
        bodyLimit: LARGEST,
        schema: {
          tags,
          summary: "keeps a manual (PDF, multipart/form-data) beside the lift",
          params: byId,
          consumes: ["multipart/form-data"],
          response: { 201: z.object({ hash: z.string() }), 415: message },
        },
      },
      async (request, reply) => {
        if (!request.isMultipart()) return reply.code(415).send({ message: "Send the manual as multipart/form-data." });
        const file = await request.file({ limits: { fileSize: LARGEST, files: 1, fields: 5 } });
        const bytes = await file?.toBuffer();
        if (!file || !bytes?.subarray(0, 1024).includes("%PDF-"))
          return reply.code(415).send({ message: "This is no PDF file. Bring the manual as a PDF." });
        const name = (file.filename || "manual.pdf").replace(/^.*[\\/]/, "").slice(0, 120);
        const kept = await store.attach(request.params.id, {
          bytes,
          name,
          mime: "application/pdf",
          note: "manual",
          by: request.someone!.name,
        });
        return reply.code(201).send({ hash: kept.hash });
      },
    );

    const nameOf = async (id: string, hash: string): Promise<string | undefined> =>
      (await store.attachments(id)).find((each) => each.hash === hash)?.name;

    server.get(
      "/api/lifts/:id/manuals/:hash",
      {
        config: { least: "reader" },
        schema: { tags, summary: "every value that was read, with page, box and line", params: byManual },
      },
      async ({ params }, reply) => {
        const name = await nameOf(params.id, params.hash);
        const reading = name && (await desk.reading(params.hash));
        return reading ? { name, reading } : reply.code(404).send({ message: "There is no such manual." });
      },
    );

    server.get(
      "/api/lifts/:id/manuals/:hash/pages/:page",
      {
        config: { least: "reader" },
        schema: {
          tags,
          summary: "a page as a picture",
          params: byManual.extend({ page: z.coerce.number().int().positive().max(10_000) }),
        },
      },
      async ({ params }, reply) => {
        const known = await nameOf(params.id, params.hash);
        const picture = known && (await desk.picture(params.hash, params.page));
        if (!picture) return reply.code(404).send({ message: "There is no picture of this page." });
        return reply
          .type("image/png")
          .header("cache-control", "private, max-age=31536000, immutable")
          .send(Buffer.from(picture));
      },
    );

    server.post(
      "/api/lifts/:id/manuals/:hash/pictures",
      {
        config: { least: "editor" },
        schema: {
          tags,
          summary: "keeps the picture of a line beside the lift",
          params: byManual,
          body: z.object({ page: z.int().positive().max(10_000), box }),
          response: { 201: z.object({ hash: z.string() }), 404: message },
        },
      },
      async ({ params, body, someone }, reply) => {
        const known = await nameOf(params.id, params.hash);
        const { page } = body;
        const around = {
          x: body.box.x - 12,
          y: body.box.y - 8,
          width: body.box.width + 24,
          height: body.box.height + 16,
        };
        const bytes = known && (await desk.picture(params.hash, page, around));
        if (!bytes) return reply.code(404).send({ message: "There is no picture of this line." });
        const name = `page ${page}, line at ${Math.round(body.box.y)}.png`;
        const note = `line of ${known}`;
        const kept = await store.attach(params.id, { bytes, name, mime: "image/png", note, by: someone!.name });
        return reply.code(201).send({ hash: kept.hash });
      },
    );
  };
