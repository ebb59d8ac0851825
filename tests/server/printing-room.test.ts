import { EventEmitter } from "node:events";
import { expect, test, vi } from "vitest";

/** A worker that never answers, and tells when it is given up. */
const run = vi.fn(
  (_: unknown, { signal }: { signal: AbortSignal }) =>
    new Promise((_done, fail) =>
      signal.addEventListener("abort", () =>
        fail(Object.assign(new Error("The task has been aborted"), { name: "AbortError" })),
      ),
    ),
);
vi.mock("piscina", () => ({
  Piscina: class extends EventEmitter {
    run = run;
    close = async () => undefined;
  },
}));
vi.mock("node:fs", async (original) => ({ ...(await original<typeof import("node:fs")>()), existsSync: () => true }));

const { openPrintingRoom } = await import("../../apps/server/src/papers/printing-room.ts");
const wish = { text: "", name: "installer", format: "pdf", paper: "a4", date: "2026-01-01", units: undefined } as const;

test("a sheet that takes too long is given up in words, not as a fault", async () => {
  expect(await openPrintingRoom(20).print(wish)).toEqual({ kind: "late", words: expect.stringContaining("Ask again") });
});

test("a queue that is full says the same; any other fault stays one", async () => {
  run.mockRejectedValueOnce(new Error("Task queue is at limit"));
  expect((await openPrintingRoom().print(wish)).kind).toBe("late");
  run.mockRejectedValueOnce(new Error("out of ink"));
  await expect(openPrintingRoom().print(wish)).rejects.toThrow("out of ink");
});
