import { describe, expect, test } from "vitest";
import {
  countsOf,
  type Fate,
  notSeen,
  type Reply,
  sendInOrder,
  type Waiting,
} from "../../apps/web/src/field/waiting.ts";

const item = (id: string, made: string, fate: Fate = { state: "waits" }): Waiting => ({
  kind: "entry",
  id,
  jobId: "job",
  made,
  words: id,
  fate,
  place: "drill/hole-1",
  body: { kind: "drill reading", set: [], add: [] },
});

/** Sends and says what was posted, and what became of each. */
const sent = async (items: readonly Waiting[], replies: Readonly<Record<string, Reply>>) => {
  const posted: string[] = [];
  const fates: Record<string, Fate | "gone"> = {};
  const why = await sendInOrder(
    items,
    async ({ id }) => {
      posted.push(id);
      return replies[id] ?? { kind: "taken", revision: 7 };
    },
    async ({ id }, fate) => {
      fates[id] = fate;
    },
  );
  return { posted, fates, why };
};

describe("what waits on the device", () => {
  const [b, a, c] = [item("b", "2026-02"), item("a", "2026-01"), item("c", "2026-03")];

  test("goes oldest first, and each says as which revision it was taken", async () =>
    expect(await sent([b, a, c], {})).toEqual({
      posted: ["a", "b", "c"],
      fates: {
        a: { state: "sent", revision: 7 },
        b: { state: "sent", revision: 7 },
        c: { state: "sent", revision: 7 },
      },
      why: undefined,
    }));

  test("stops where nobody answers; what is behind it keeps its place", async () =>
    expect(await sent([b, a, c], { b: { kind: "not-now", why: "No connection." } })).toEqual({
      posted: ["a", "b"],
      fates: { a: { state: "sent", revision: 7 } },
      why: "No connection.",
    }));

  test("one that is refused is kept with its reason, and the next one goes", async () => {
    const { posted, fates } = await sent([a, b], { a: { kind: "refused", why: "no such anchor" } });
    expect(posted).toEqual(["a", "b"]);
    expect(fates.a).toEqual({ state: "refused", why: "no such anchor" });
  });

  test("refused and sent ones are not sent again", async () =>
    expect(
      (await sent([item("r", "1", { state: "refused", why: "" }), item("s", "2", { state: "sent", revision: 3 })], {}))
        .posted,
    ).toEqual([]));

  test("a photograph is gone once it is taken", async () =>
    expect((await sent([a], { a: { kind: "taken", revision: undefined } })).fates).toEqual({ a: "gone" }));

  test("counts in the job until this device has seen the revision that holds it", () => {
    const items = [
      c,
      item("s", "2026-02", { state: "sent", revision: 5 }),
      item("r", "1", { state: "refused", why: "" }),
    ];
    expect(notSeen(items, "job", 4).map(({ id }) => id)).toEqual(["s", "c"]);
    expect(notSeen(items, "job", 5).map(({ id }) => id)).toEqual(["c"]);
    expect(notSeen(items, "other", 4)).toEqual([]);
    expect(countsOf(items)).toMatchObject({ entries: 1, photographs: 0, refused: [{ id: "r" }] });
  });
});
