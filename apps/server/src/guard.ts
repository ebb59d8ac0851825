import type { Role, Store } from "@floorworthy/store";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { mayDo, personOf } from "./sign-in.ts";

declare module "fastify" {
  interface FastifyRequest {
    /** who asks; undefined before sign-in */
    someone: { readonly name: string; readonly role: Role } | undefined;
  }
  interface FastifyContextConfig {
    /** the least role that may ask this; owner unless said, so that a forgotten word locks rather than opens */
    readonly least?: Role | "anyone";
  }
}

export const COOKIE = "floorworthy";

/** `open`: this machine only and nobody has an account, so whoever sits here is the owner. */
export const accountsOf = async (store: Store): Promise<"open" | "accounts"> =>
  (await store.people()).length === 0 ? "open" : "accounts";

/** Another site's page must not write here with a person's cookie. Not every browser says both. */
const fromElsewhere = ({ method, headers }: FastifyRequest): boolean => {
  if (method === "GET" || method === "HEAD") return false;
  const { origin, host, "sec-fetch-site": site = "none" } = headers;
  return !["same-origin", "none"].includes(String(site)) || (origin !== undefined && hostOf(origin) !== host);
};

const hostOf = (origin: string): string | undefined => (URL.canParse(origin) ? new URL(origin).host : undefined);

/**
 * Every address under /api asks for a role before anything else is looked at. The address is the one that was found,
 * never the one that was written: `/%61pi/jobs` is /api/jobs too.
 */
export const guard = (server: FastifyInstance, store: Store): void => {
  server.decorateRequest("someone", undefined);
  server.addHook("onRequest", async (request, reply) => {
    if (!request.routeOptions.url?.startsWith("/api/")) return;
    if (fromElsewhere(request)) return reply.code(403).send({ message: "Another site may not write here." });
    const least = request.routeOptions.config.least ?? "owner";
    if ((await accountsOf(store)) === "open") {
      request.someone = { name: "this machine", role: "owner" };
      return;
    }
    request.someone = await personOf(store, request.cookies[COOKIE]);
    if (least === "anyone") return;
    if (!request.someone) return reply.code(401).send({ message: "Sign in first." });
    if (!mayDo(request.someone.role, least))
      return reply.code(403).send({ message: `This needs the role ${least}; you are ${request.someone.role}.` });
  });
};
