import fastifyCookie from "@fastify/cookie";
import fastifyMultipart from "@fastify/multipart";
import fastifyRateLimit from "@fastify/rate-limit";
import fastifyStatic from "@fastify/static";
import fastifySwagger from "@fastify/swagger";
import { type Store, StoreRefusal } from "@floorworthy/store";
import fastify, { type FastifyError, type FastifyInstance } from "fastify";
import {
  hasZodFastifySchemaValidationErrors,
  jsonSchemaTransform,
  serializerCompiler,
  validatorCompiler,
} from "fastify-type-provider-zod";
import { guard } from "./guard.ts";
import { openPrintingRoom } from "./papers/printing-room.ts";
import { copyRoutes } from "./routes/copies.ts";
import { demoRoutes } from "./routes/demo.ts";
import { documentRoutes } from "./routes/documents.ts";
import { fieldRoutes } from "./routes/field.ts";
import { paperRoutes } from "./routes/papers.ts";
import { peopleRoutes } from "./routes/people.ts";
import { isLocalHost, safeHeaders } from "./safe-headers.ts";
import { isThisMachine, type Settings } from "./settings.ts";

type Wanted = Pick<Settings, "page" | "examples" | "host" | "rate">;

/** The server, not yet listening. */
export const createServer = async (
  store: Store,
  { page, examples, host, rate }: Wanted,
  log: "quiet" | "logged" = "quiet",
): Promise<FastifyInstance> => {
  const server = fastify({
    forceCloseConnections: true,
    bodyLimit: 1_000_000,
    logger: log === "logged" && {
      level: "warn",
      redact: ["req.headers.cookie", "req.headers.authorization"],
    },
  });
  server.setValidatorCompiler(validatorCompiler);
  server.setSerializerCompiler(serializerCompiler);
  server.setErrorHandler(inWords);

  server.addHook("onRequest", async (request, reply) => {
    reply.headers(safeHeaders);
    if (isThisMachine(host) && !isLocalHost(request.headers.host ?? ""))
      await reply.code(421).send({ message: "This server answers only on this machine's own address." });
  });
  await server.register(fastifyRateLimit, { max: rate, timeWindow: "1 minute" });
  await server.register(fastifyCookie);
  await server.register(fastifyMultipart);
  await server.register(fastifySwagger, {
    openapi: { openapi: "3.1.0", info: { title: "Floorworthy", version: "1" } },
    transform: jsonSchemaTransform,
  });
  guard(server, store);

  const anyone = { config: { least: "anyone" } } as const;
  server.get("/api/health", { ...anyone, schema: { hide: true } }, async () => {
    await store.list("lift");
    return { status: "ok" };
  });
  server.get("/api/openapi.json", { ...anyone, schema: { hide: true } }, async () => server.swagger());
  await server.register(peopleRoutes(store));
  await server.register(documentRoutes(store, "job"));
  await server.register(documentRoutes(store, "lift"));
  await server.register(fieldRoutes(store));
  const room = openPrintingRoom();
  server.addHook("onClose", () => room.close());
  await server.register(paperRoutes(store, room));
  await server.register(copyRoutes(store));
  await server.register(demoRoutes(store, examples));
  await server.register(fastifyStatic, { root: page, cacheControl: true, maxAge: 0 });
  server.setNotFoundHandler((_request, reply) =>
    reply.code(404).send({ message: "There is nothing at this address." }),
  );
  return server;
};

/** One clear message for each thing that can be wrong; a fault of ours says nothing of the inside. */
const inWords: Parameters<FastifyInstance["setErrorHandler"]>[0] = (error, request, reply) => {
  if (hasZodFastifySchemaValidationErrors(error)) {
    const said = error.validation.map(({ instancePath, message }) => `${instancePath || "/"}: ${message}`);
    return reply.code(400).send({ message: said.join(" ") });
  }
  if (error instanceof StoreRefusal) {
    const missing = /^There is no such/.test(error.message);
    return reply.code(missing ? 404 : 422).send({ message: error.message });
  }
  const { statusCode = 500, message } = error as FastifyError;
  if (statusCode < 500) return reply.code(statusCode).send({ message });
  request.log.error(error);
  return reply.code(500).send({ message: "The server could not do it. This is a fault of the program." });
};
