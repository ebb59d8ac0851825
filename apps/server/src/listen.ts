import type { FastifyInstance } from "fastify";

/** Listens at the first free port from `port` on. Returns the port. */
export const listen = async (server: FastifyInstance, host: string, port: number, tries = 20): Promise<number> => {
  try {
    await server.listen({ host, port });
    return port;
  } catch (error) {
    if ((error as { code?: string }).code !== "EADDRINUSE" || tries <= 1) throw error;
    console.log(`Port ${port} is taken; trying ${port + 1}.`);
    return listen(server, host, port + 1, tries - 1);
  }
};
