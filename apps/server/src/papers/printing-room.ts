import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Piscina } from "piscina";
import printSheet, { type PaperWish, type Printed } from "./print-sheet.ts";

export interface PrintingRoom {
  readonly print: (wish: PaperWish) => Promise<Printed>;
  readonly close: () => Promise<void>;
}

const built = fileURLToPath(new URL("print-sheet.mjs", import.meta.url));

/** A worker prints; a sheet that takes too long is given up. Without the built worker (in tests) it is done in place. */
export const openPrintingRoom = (patience = 30_000): PrintingRoom => {
  if (!existsSync(built)) return { print: printSheet, close: async () => undefined };
  const pool = new Piscina({ filename: built, minThreads: 0, maxThreads: 1, idleTimeout: 30_000, maxQueue: 50 });
  const print: PrintingRoom["print"] = (wish) =>
    pool.run(wish, { signal: AbortSignal.timeout(patience) }).catch((error: Error) => {
      if (error.name !== "AbortError" && !/queue is at limit/.test(error.message)) throw error;
      return { kind: "late", words: "The sheet could not be printed in time: this machine is busy. Ask again." };
    });
  return { print, close: () => pool.close() };
};
