import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { type Trouble, troubles } from "../glyphs/index.ts";
import type { ManualReading } from "../manual-reading.ts";
import type { Crop } from "./pictures.ts";
import type { Brought, Errand } from "./reading-room.ts";

/** A module that calls serveErrand when it is loaded as a worker. */
export interface WorkerProgram {
  readonly file: URL;
  readonly argv?: readonly string[];
}

export interface Bounds {
  /** longest time, s */
  readonly seconds?: number;
  /** most memory the reading may take beside what the process has, MB */
  readonly megabytes?: number;
  readonly program?: WorkerProgram;
}

export interface ReadManualOptions extends Bounds {
  /** what is done with pages that are pictures; recognising takes about a second a page and is never sure */
  readonly pictures?: "as-they-are" | "recognised";
}

/** From source the worker needs a loader; a built program names its own, or has it beside it. */
const ownProgram = (): WorkerProgram =>
  import.meta.url.endsWith(".ts")
    ? { file: new URL("worker-from-source.mjs", import.meta.url) }
    : { file: new URL("read-manual.mjs", import.meta.url) };

/** Reads a manual in a worker of its own, bounded in time and memory. Nothing in the file is executed or fetched. */
export const readManual = async (
  bytes: Uint8Array,
  { pictures = "as-they-are", seconds = pictures === "recognised" ? 240 : 60, ...bounds }: ReadManualOptions = {},
): Promise<ManualReading> => {
  const brought = await inWorker({ kind: "read", bytes, pictures }, { ...bounds, seconds });
  return brought.kind === "read"
    ? brought.reading
    : { ok: false, trouble: brought.kind === "failed" ? brought.trouble : troubles.broken };
};

/** Pictures of lines, as PNG, drawn in a worker; undefined where one could not be drawn. */
export const drawLines = async (
  bytes: Uint8Array,
  crops: readonly Crop[],
  bounds: Bounds = {},
): Promise<readonly (Uint8Array | undefined)[]> => {
  if (crops.length === 0) return [];
  const brought = await inWorker({ kind: "draw", bytes, crops }, bounds);
  return brought.kind === "drawn" ? brought.images : crops.map(() => undefined);
};

const MEGABYTE = 1024 * 1024;
const LOOK_EVERY = 150;

const inWorker = (
  errand: Errand,
  { seconds = 60, megabytes = 800, program = ownProgram() }: Bounds,
): Promise<Brought> =>
  new Promise((resolve) => {
    const start = process.memoryUsage.rss();
    const worker = new Worker(program.file, {
      workerData: { errand },
      argv: [...(program.argv ?? [])],
      resourceLimits: { maxOldGenerationSizeMb: megabytes, maxYoungGenerationSizeMb: 64, stackSizeMb: 4 },
      stdout: true,
      stderr: true,
    });
    const end = (brought: Brought): void => {
      clearTimeout(late);
      clearInterval(look);
      resolve(brought);
      void worker.terminate();
    };
    const fail = (trouble: Trouble): void => end({ kind: "failed", trouble });
    const late = setTimeout(() => fail(troubles["too-slow"]), seconds * 1000);
    const look = setInterval(() => {
      if (process.memoryUsage.rss() - start > megabytes * MEGABYTE) fail(troubles["too-much-memory"]);
    }, LOOK_EVERY);
    worker.once("message", end);
    worker.once("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "ERR_WORKER_OUT_OF_MEMORY") fail(troubles["too-much-memory"]);
      else if (error.code === "ERR_MODULE_NOT_FOUND")
        throw new Error(`the worker is missing: ${fileURLToPath(program.file)}`);
      else fail(troubles.broken);
    });
    worker.once("exit", () => fail(troubles.broken));
  });
