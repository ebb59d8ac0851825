import type { Store } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { fillWithDemo } from "../demo.ts";
import { listExamples, readExample, readLiftSheets } from "../examples.ts";
import { byId, example } from "../shapes.ts";

/** The invented jobs that show what the tool does. */
export const demoRoutes =
  (store: Store, folder: string): FastifyPluginAsyncZod =>
  async (server) => {
    const tags = ["demo"];
    server.get(
      "/api/demo",
      {
        config: { least: "reader" },
        schema: { tags, summary: "what the demo holds", response: { 200: z.array(example) } },
      },
      async () => [...(await listExamples(folder))],
    );
    server.get("/api/examples", { config: { least: "reader" }, schema: { hide: true } }, async () =>
      listExamples(folder),
    );
    server.get(
      "/api/examples/:id",
      { config: { least: "reader" }, schema: { hide: true, params: byId } },
      async ({ params }, reply) => {
        const text = await readExample(folder, params.id);
        if (text === undefined) return reply.code(404).send({ message: "There is no demo job of that name." });
        return reply.type("text/plain; charset=utf-8").send(text);
      },
    );
    server.get("/api/sheets", { config: { least: "reader" }, schema: { hide: true } }, async () =>
      readLiftSheets(folder),
    );
    server.post(
      "/api/demo",
      {
        config: { least: "editor" },
        schema: { tags, summary: "puts the demo jobs into the store", response: { 200: z.object({ put: z.int() }) } },
      },
      async ({ someone }) => ({ put: await fillWithDemo(store, folder, someone!.name) }),
    );
  };
