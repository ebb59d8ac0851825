import type { FastifyInstance } from "fastify";

/** Listens on this machine only, at the first free port from `port` on. Returns the port. */
export const listen = async (server: FastifyInstance, port: number, tries = 20): Promise<number> => {
  try {
    await server.listen({ host: "127.0.0.1", port });
    return port;
  } catch (error) {
    if ((error as { code?: string }).code !== "EADDRINUSE" || tries <= 1) throw error;
    console.log(`Port ${port} is taken; trying ${port + 1}.`);
    return listen(server, port + 1, tries - 1);
  }
};

/** The port asked for in the environment, or the usual one. */
export const wantedPort = (asked: string | undefined): number => {
  const port = Number(asked ?? 4370);
  return Number.isInteger(port) && port > 0 && port < 65_536 ? port : 4370;
};
