import fastifyCookie from "@fastify/cookie";
import fastifyMultipart from "@fastify/multipart";
import fastifyRateLimit from "@fastify/rate-limit";
import fastifyStatic from "@fastify/static";
import fastifySwagger from "@fastify/swagger";
import { type Store, StoreRefusal } from "@floorworthy/store";
import fastify, {
  type FastifyError,
  type FastifyInstance,
  type FastifyRequest,
  type FastifyServerOptions,
  LogController,
} from "fastify";
import {
  hasZodFastifySchemaValidationErrors,
  jsonSchemaTransform,
  serializerCompiler,
  validatorCompiler,
} from "fastify-type-provider-zod";
import { guard } from "./guard.ts";
import { note } from "./log.ts";
import { openReadingDesk } from "./manuals/reading-desk.ts";
import { openPrintingRoom } from "./papers/printing-room.ts";
import { copyRoutes } from "./routes/copies.ts";
import { demoRoutes } from "./routes/demo.ts";
import { documentRoutes } from "./routes/documents.ts";
import { fieldRoutes } from "./routes/field.ts";
import { manualRoutes } from "./routes/manuals.ts";
import { paperRoutes } from "./routes/papers.ts";
import { peopleRoutes } from "./routes/people.ts";
import { isLocalHost, safeHeaders } from "./safe-headers.ts";
import { isThisMachine, type Settings } from "./settings.ts";

type Wanted = Pick<Settings, "page" | "examples" | "host" | "rate">;

/** How long a client may take, ms. */
export interface Patience {
  /** for a whole request; a photograph over a poor line takes minutes */
  readonly request: number;
  /** for its head */
  readonly head: number;
  /** without a byte either way */
  readonly silence: number;
}
const usualPatience: Patience = { request: 300_000, head: 20_000, silence: 60_000 };
const MOST_CONNECTIONS = 500;

/** The server, not yet listening. Closing it lets what is being answered finish. */
export const createServer = async (
  store: Store,
  { page, examples, host, rate }: Wanted,
  logger: FastifyServerOptions["logger"] = false,
  { request, head, silence }: Patience = usualPatience,
): Promise<FastifyInstance> => {
  const server = fastify({
    forceCloseConnections: "idle",
    bodyLimit: 1_000_000,
    requestTimeout: request,
    connectionTimeout: silence,
    http: { headersTimeout: head, connectionsCheckingInterval: Math.min(head, 10_000) },
    logger: logger ?? false,
    logController: new LogController({ disableRequestLogging: true }),
  });
  server.server.maxConnections = MOST_CONNECTIONS;
  server.setValidatorCompiler(validatorCompiler);
  server.setSerializerCompiler(serializerCompiler);
  server.setErrorHandler(inWords);

  server.addHook("onRequest", async (request, reply) => {
    reply.headers(safeHeaders);
    if (isThisMachine(host) && !isLocalHost(request.headers.host ?? ""))
      await reply.code(421).send({ message: "This server answers only on this machine's own address." });
  });
  server.addHook("onResponse", note);
  // the page's own files cost nothing, and half a page is worse than none
  const ofThePage = ({ routeOptions }: FastifyRequest) => !routeOptions.url?.startsWith("/api/");
  await server.register(fastifyRateLimit, { max: rate, timeWindow: "1 minute", allowList: ofThePage });
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
  await server.register(manualRoutes(store, openReadingDesk(store)));
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
