import type { Store } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { attachment, byHash, byId, fieldEntry, keptEntry, message } from "../shapes.ts";
import { takeIn } from "../take-in.ts";

/** Shown as pictures by the page; everything else is only handed out as a download. */
const shown = new Set(["image/jpeg", "image/png", "image/webp"]);
const LARGEST = 20_000_000;

/** What comes in from the garage: entries that may be sent twice, photographs, papers. */
export const fieldRoutes =
  (store: Store): FastifyPluginAsyncZod =>
  async (server) => {
    const tags = ["field"];

    server.post(
      "/api/jobs/:id/entries",
      {
        config: { least: "editor" },
        schema: {
          tags,
          summary: "takes an entry into the job, once however often it is sent",
          params: byId,
          body: fieldEntry,
          response: { 200: keptEntry, 422: message },
        },
      },
      async ({ params, body, someone }) => {
        const { id, kind, at, set, add } = body;
        const entry = {
          id,
          documentId: params.id,
          kind,
          body: JSON.stringify({ set, add }),
          madeAt: at,
          by: someone!.name,
        };
        return store.enter(entry, (text) => takeIn({ set, add }, text));
      },
    );

    server.get(
      "/api/jobs/:id/entries",
      {
        config: { least: "reader" },
        schema: { tags, summary: "what came in from the field", params: byId, response: { 200: z.array(keptEntry) } },
      },
      async ({ params }) => [...(await store.entries(params.id))],
    );

    server.post(
      "/api/jobs/:id/attachments",
      {
        config: { least: "editor" },
        bodyLimit: LARGEST,
        schema: {
          tags,
          summary: "one file as multipart/form-data, with an optional note",
          params: byId,
          consumes: ["multipart/form-data"],
          response: { 201: attachment, 413: message, 415: message },
        },
      },
      async (request, reply) => {
        if (!request.isMultipart()) return reply.code(415).send({ message: "Send the file as multipart/form-data." });
        const file = await request.file({ limits: { fileSize: LARGEST, files: 1, fields: 5 } });
        if (!file) return reply.code(415).send({ message: "There is no file in it." });
        const bytes = await file.toBuffer();
        const field = file.fields.note;
        const note = field && "value" in field ? String(field.value).slice(0, 300) : "";
        const name = (file.filename || "file").replace(/^.*[\\/]/, "").slice(0, 120);
        const mime = /^[\w.+-]+\/[\w.+-]+$/.test(file.mimetype) ? file.mimetype : "application/octet-stream";
        const kept = await store.attach(request.params.id, { bytes, name, mime, note, by: request.someone!.name });
        return reply.code(201).send(kept);
      },
    );

    server.get(
      "/api/jobs/:id/attachments",
      {
        config: { least: "reader" },
        schema: { tags, summary: "the job's files", params: byId, response: { 200: z.array(attachment) } },
      },
      async ({ params }) => [...(await store.attachments(params.id))],
    );

    server.get(
      "/api/attachments/:hash",
      {
        config: { least: "reader" },
        schema: { tags, summary: "the bytes of a file", params: byHash },
      },
      async ({ params }, reply) => {
        const file = await store.attachment(params.hash);
        if (!file) return reply.code(404).send({ message: "There is no such file." });
        const picture = shown.has(file.mime);
        return reply
          .type(picture ? file.mime : "application/octet-stream")
          .header("content-disposition", picture ? "inline" : "attachment")
          .header("cache-control", "private, max-age=31536000, immutable")
          .send(Buffer.from(file.bytes));
      },
    );
  };
