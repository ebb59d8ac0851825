import type { FastifyBaseLogger, FastifyReply, FastifyRequest, FastifyServerOptions } from "fastify";

/**
 * One JSON object a line. Bodies, cookies and what a database says of its rows are never in it.
 * @param where "" faults only, to stderr · "stderr" every request too · else a file that every request is added to
 */
export const logTo = (where: string): FastifyServerOptions["logger"] => ({
  level: where === "" ? "warn" : "info",
  base: null,
  timestamp: () => `,"at":"${new Date().toISOString()}"`,
  serializers: { err: told },
  ...(where === "" || where === "stderr" ? { stream: process.stderr } : { file: where }),
});

const told = ({ name, message, code, stack }: Error & { readonly code?: string }) => ({
  type: name,
  message,
  stack: stack ?? "",
  ...(code !== undefined && { code }),
});

/** What is noted of a request once it is answered. */
export const note = async (request: FastifyRequest, reply: FastifyReply): Promise<void> => {
  const { method, url, ip, someone } = request;
  const log: FastifyBaseLogger = request.log;
  log.info({ method, url, status: reply.statusCode, ms: Math.round(reply.elapsedTime), from: ip, by: someone?.name });
};
