import { serveErrand } from "./reading-room.ts";

await serveErrand();
