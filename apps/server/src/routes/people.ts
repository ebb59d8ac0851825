import { type Person, type Store, StoreRefusal } from "@floorworthy/store";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { accountsOf, COOKIE } from "../guard.ts";
import { byId, credentials, message, newPerson, person, role, session } from "../shapes.ts";
import { hashPassword, passwordFault, signIn, signOut } from "../sign-in.ts";

const known = ({ id, name, role }: Person) => ({ id, name, role });

/** Who may do what. The first person is an owner; from then on everybody signs in. */
export const peopleRoutes =
  (store: Store): FastifyPluginAsyncZod =>
  async (server) => {
    const tags = ["people"];
    const anyone = { least: "anyone" } as const;
    const cookie = { path: "/", httpOnly: true, sameSite: "strict", maxAge: 30 * 86_400 } as const;

    server.get(
      "/api/session",
      { config: anyone, schema: { tags, summary: "who asks", response: { 200: session } } },
      async ({ someone }) => ({
        accounts: await accountsOf(store),
        ...(someone && { person: { name: someone.name, role: someone.role } }),
      }),
    );

    server.post(
      "/api/session",
      {
        config: { ...anyone, rateLimit: { max: 10, timeWindow: "1 minute" } },
        schema: { tags, summary: "signs in", body: credentials, response: { 200: session, 401: message } },
      },
      async ({ body, protocol }, reply) => {
        const signed = await signIn(store, body.name, body.password);
        if (!signed) return reply.code(401).send({ message: "Name and password do not belong together." });
        reply.setCookie(COOKIE, signed.token, { ...cookie, secure: protocol === "https" });
        return { accounts: "accounts" as const, person: { name: signed.person.name, role: signed.person.role } };
      },
    );

    server.delete(
      "/api/session",
      { config: anyone, schema: { tags, summary: "signs out", response: { 204: z.null() } } },
      async (request, reply) => {
        await signOut(store, request.cookies[COOKIE]);
        return reply.clearCookie(COOKIE, { path: "/" }).code(204).send(null);
      },
    );

    server.get(
      "/api/people",
      { config: { least: "owner" }, schema: { tags, summary: "everybody", response: { 200: z.array(person) } } },
      async () => (await store.people()).map(known),
    );

    server.post(
      "/api/people",
      {
        config: { least: "owner" },
        schema: { tags, summary: "a new person", body: newPerson, response: { 201: person, 422: message } },
      },
      async ({ body }, reply) => {
        const fault = passwordFault(body.password);
        if (fault) throw new StoreRefusal(fault);
        if ((await accountsOf(store)) === "open" && body.role !== "owner")
          throw new StoreRefusal("The first person is an owner.");
        const passwordHash = await hashPassword(body.password);
        return reply.code(201).send(known(await store.addPerson({ name: body.name, role: body.role, passwordHash })));
      },
    );

    server.put(
      "/api/people/:id/role",
      {
        config: { least: "owner" },
        schema: {
          tags,
          summary: "another role",
          params: byId,
          body: z.object({ role }),
          response: { 204: z.null(), 422: message },
        },
      },
      async ({ params, body }, reply) => {
        await store.setRole(params.id, body.role);
        return reply.code(204).send(null);
      },
    );
  };
