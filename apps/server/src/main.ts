// Serves the page on this machine. Built into dist/, beside the page it serves.
import { fileURLToPath } from "node:url";
import { listen, wantedPort } from "./listen.ts";
import { createServer } from "./server.ts";
import { whenToStop } from "./when-to-stop.ts";

const server = createServer({
  page: fileURLToPath(new URL("web/", import.meta.url)),
  examples: process.env.FLOORWORTHY_JOBS ?? fileURLToPath(new URL("../examples/", import.meta.url)),
});
whenToStop(() => server.close().then(() => process.exit(0)));
const port = await listen(server, wantedPort(process.env.PORT));
console.log(`Floorworthy is at http://127.0.0.1:${port}/ (Ctrl+C ends it)`);
