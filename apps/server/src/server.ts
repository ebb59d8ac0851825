import fastifyStatic from "@fastify/static";
import fastify, { type FastifyInstance } from "fastify";
import { listExamples, readExample, readLiftSheets } from "./examples.ts";
import { isLocalHost, safeHeaders } from "./safe-headers.ts";

/** Folders the server reads: the built page, and the demo jobs. */
export interface ServerFolders {
  readonly page: string;
  readonly examples: string;
}

/** The server, not yet listening. */
export const createServer = ({ page, examples }: ServerFolders): FastifyInstance => {
  const server = fastify({ forceCloseConnections: true, bodyLimit: 65_536 });

  server.addHook("onRequest", async (request, reply) => {
    reply.headers(safeHeaders);
    if (!isLocalHost(request.headers.host ?? ""))
      await reply.code(421).send({ message: "This server answers only on this machine's own address." });
  });
  server.register(fastifyStatic, { root: page, cacheControl: true, maxAge: 0 });

  server.get("/api/health", async () => ({ status: "ok" }));
  server.get("/api/examples", async () => listExamples(examples));
  server.get<{ Params: { id: string } }>("/api/examples/:id", async (request, reply) => {
    const text = await readExample(examples, request.params.id);
    if (text === undefined) return reply.code(404).send({ message: "There is no demo job of that name." });
    return reply.type("text/plain; charset=utf-8").send(text);
  });
  server.get("/api/sheets", async () => readLiftSheets(examples));
  return server;
};
