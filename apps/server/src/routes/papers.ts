import { sheets } from "@floorworthy/papers";
import type { Store } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import type { PrintingRoom } from "../papers/printing-room.ts";
import { byId } from "../shapes.ts";

const types = { pdf: "application/pdf", svg: "image/svg+xml", dxf: "image/vnd.dxf" } as const;

/** The sheets of a job as files. */
export const paperRoutes =
  (store: Store, room: PrintingRoom): FastifyPluginAsyncZod =>
  async (server) => {
    server.get(
      "/api/papers",
      {
        config: { least: "reader" },
        schema: {
          tags: ["papers"],
          summary: "the sheets there are",
          response: { 200: z.array(z.object({ name: z.string(), title: z.string(), reader: z.string() })) },
        },
      },
      async () => sheets.map(({ name, title, reader }) => ({ name, title, reader })),
    );

    server.get(
      "/api/jobs/:id/papers/:name",
      {
        config: { least: "reader" },
        schema: {
          tags: ["papers"],
          summary: "one sheet of the job's latest revision",
          params: byId.extend({ name: z.string().max(60) }),
          querystring: z.object({
            format: z.enum(["pdf", "svg", "dxf"]).default("pdf"),
            paper: z.enum(["letter", "a4"]).default("letter"),
            date: z.iso.date().optional(),
            units: z.enum(["inch-pound", "si"]).optional(),
          }),
        },
      },
      async ({ params, query }, reply) => {
        const { format, paper, date = new Date().toISOString().slice(0, 10), units } = query;
        const head = await store.read(params.id);
        if (head?.kind !== "job") return reply.code(404).send({ message: "There is no such document." });
        if (!sheets.some(({ name }) => name === params.name))
          return reply.code(404).send({ message: "There is no such sheet." });
        const printed = await room.print({ text: head.text, name: params.name, format, paper, date, units });
        if (printed.kind !== "printed")
          return reply.code(printed.kind === "late" ? 503 : 422).send({ message: printed.words });
        return reply
          .type(types[format])
          .header("content-disposition", `inline; filename="${head.id}-${params.name}.${format}"`)
          .header("content-security-policy", "default-src 'none'; style-src 'unsafe-inline'")
          .send(Buffer.from(printed.bytes));
      },
    );
  };
