// The worker when the program runs from source, in tests and on the bench: TypeScript needs a loader in each thread.
import { register } from "tsx/esm/api";

register();
await import("./worker.ts");
