import { openStore, type Store, StoreRefusal } from "@floorworthy/store";
import { afterEach, beforeEach, describe, expect, test } from "vitest";

/** What every database must do alike. `address` gives a new, empty place each time it is called. */
export const storeContract = (name: string, address: () => string): void => {
  describe(`the store on ${name}`, () => {
    let store: Store;
    let place: string;
    let tick = 0;
    const now = () => new Date(Date.UTC(2026, 0, 1, 0, 0, ++tick)).toISOString();
    beforeEach(async () => {
      place = address();
      store = await openStore(place, { now });
    });
    afterEach(() => store.close());

    const job = (text: string) => ({ title: `Bay ${text}`, text, by: "Ada" });
    const collected = async (parts: AsyncIterable<Uint8Array>): Promise<Uint8Array> => {
      const all: Uint8Array[] = [];
      for await (const part of parts) all.push(part);
      return Buffer.concat(all);
    };
    const given = async function* (...parts: Uint8Array[]) {
      yield* parts;
    };

    test("keeps every revision and lists the latest", async () => {
      const first = await store.create("job", job("one"));
      await store.save(first.id, 1, { ...job("two"), note: "measured again" });
      expect(await store.read(first.id)).toMatchObject({ number: 2, text: "two", note: "measured again", kind: "job" });
      expect((await store.read(first.id, 1))?.text).toBe("one");
      expect((await store.history(first.id)).map(({ number }) => number)).toEqual([2, 1]);
      expect(await store.list("job")).toMatchObject([{ id: first.id, title: "Bay two", number: 2 }]);
      expect(await store.list("lift")).toEqual([]);
    });

    test("knows no other document", async () => {
      expect(await store.read("none")).toBeUndefined();
      expect(await store.read("' or 1=1 --")).toBeUndefined();
      await expect(store.save("none", 1, job("x"))).rejects.toThrow(StoreRefusal);
    });

    test("two writers on one revision: one is saved, the other is told", async () => {
      const { id } = await store.create("job", job("one"));
      const results = await Promise.all(["a", "b", "c", "d"].map((text) => store.save(id, 1, job(text))));
      expect(results.filter(({ outcome }) => outcome === "saved")).toHaveLength(1);
      const head = await store.read(id);
      for (const result of results) if (result.outcome === "conflict") expect(result.head).toEqual(head);
      expect((await store.history(id)).length).toBe(2);
    });

    test("nobody writes ahead of what stands", async () => {
      const { id } = await store.create("job", job("one"));
      expect((await store.save(id, 7, job("x"))).outcome).toBe("conflict");
      expect((await store.history(id)).length).toBe(1);
    });

    test("what is put away leaves the list and keeps its history", async () => {
      const { id } = await store.create("job", job("one"));
      await store.save(id, 1, { ...job("one"), shelf: "put-away" });
      expect(await store.list("job")).toEqual([]);
      expect(await store.list("job", "put-away")).toHaveLength(1);
      expect((await store.read(id, 1))?.shelf).toBe("open");
    });

    test("an id is taken once", async () => {
      await store.create("lift", { ...job("one"), id: "wall" });
      await expect(store.create("lift", { ...job("two"), id: "wall" })).rejects.toThrow("of that id already");
      expect((await store.read("wall"))?.text).toBe("one");
    });

    test("text comes back to the letter", async () => {
      const text = "title: 'Ü — 4 1/2 in ⁄ 日本'\n\ttabs \\ \"quotes\" and a 🚗\n";
      const { id } = await store.create("job", { title: "Ü", text, by: "Ö" });
      expect((await store.read(id))?.text).toBe(text);
    });

    const entry = (id: string, documentId: string, body = "{}") => ({
      id,
      documentId,
      kind: "torque round",
      body,
      madeAt: "2026-01-01T00:00:00.000Z",
      by: "Bo",
    });
    const adding = (what: string) => (text: string) => ({ text: text + what, title: "Bay" });

    test("an entry sent twice is kept once", async () => {
      const { id } = await store.create("job", job("one"));
      const first = await store.enter(entry("e1", id), adding("+1"));
      const again = await store.enter(entry("e1", id), adding("+1"));
      expect(again).toEqual(first);
      expect((await store.read(id))?.text).toBe("one+1");
      expect(await store.entries(id)).toHaveLength(1);
    });

    test("entries that arrive together all stay", async () => {
      const { id } = await store.create("job", job(""));
      const ids = ["a", "b", "c", "d", "e", "a", "b"];
      await Promise.all(ids.map((each) => store.enter(entry(each, id), adding(each))));
      expect([...(await store.read(id))!.text].sort().join("")).toBe("abcde");
      expect((await store.entries(id)).map((each) => each.revision)).toEqual([2, 3, 4, 5, 6]);
    });

    test("an entry that cannot be taken in leaves nothing behind", async () => {
      const { id } = await store.create("job", job("one"));
      const refuse = () => {
        throw new StoreRefusal("no such anchor");
      };
      await expect(store.enter(entry("e1", id), refuse)).rejects.toThrow("no such anchor");
      await expect(store.enter(entry("e2", "none"), adding("x"))).rejects.toThrow(StoreRefusal);
      expect(await store.entries(id)).toEqual([]);
      expect((await store.history(id)).length).toBe(1);
    });

    const photo = { bytes: new Uint8Array([0, 1, 2, 255, 0]), name: "R4.jpg", mime: "image/jpeg", by: "Bo" };

    test("a photograph is kept once by what is in it", async () => {
      const { id } = await store.create("job", job("one"));
      const other = await store.create("job", job("two"));
      const kept = await store.attach(id, { ...photo, note: "hole R4" });
      await store.attach(id, photo);
      await store.attach(other.id, photo);
      expect(await store.attachments(id)).toEqual([kept]);
      expect(await store.attachment(kept.hash)).toEqual({ bytes: photo.bytes, mime: "image/jpeg" });
      expect(await store.attachment("../../etc")).toBeUndefined();
      await expect(store.attach("none", photo)).rejects.toThrow(StoreRefusal);
    });

    test("people and sessions", async () => {
      const ada = await store.addPerson({ name: "Ada", role: "owner", passwordHash: "h" });
      await expect(store.addPerson({ name: " ADA", role: "reader", passwordHash: "h" })).rejects.toThrow("that name");
      expect(await store.personNamed("ada ")).toEqual(ada);
      await store.openSession("token", ada.id, "2026-02-01T00:00:00.000Z");
      await store.openSession("old", ada.id, "2025-12-31T00:00:00.000Z");
      expect(await store.personOfSession("token")).toEqual(ada);
      expect(await store.personOfSession("old")).toBeUndefined();
      await store.endSession("token");
      expect(await store.personOfSession("token")).toBeUndefined();
      await expect(store.setRole(ada.id, "reader")).rejects.toThrow("last owner");
    });

    const filled = async (): Promise<string> => {
      const { id } = await store.create("job", job("one"));
      await store.enter(entry("e1", id), adding("+1"));
      await store.attach(id, photo);
      await store.create("lift", job("lift"));
      await store.addPerson({ name: "Ada", role: "owner", passwordHash: "h" });
      return id;
    };

    test("a backup made while others write holds one instant, and restores into an empty store", async () => {
      const id = await filled();
      const parts: Uint8Array[] = [];
      const copying = (async () => {
        for await (const part of store.backup()) parts.push(part);
      })();
      const writing = Array.from({ length: 20 }, (_, i) => store.enter(entry(`w${i}`, id), adding(`w${i}`)));
      await Promise.all([copying, ...writing]);
      const other = await openStore(address());
      await other.restore(given(...parts));
      const history = await other.history(id);
      const entries = await other.entries(id);
      expect(history.length).toBe(entries.length + 1);
      expect((await other.read(id))?.number).toBe(history.length);
      expect(await other.attachment((await other.attachments(id))[0]!.hash)).toEqual({
        bytes: photo.bytes,
        mime: photo.mime,
      });
      expect(await other.people()).toHaveLength(1);
      expect(await other.list("lift")).toHaveLength(1);
      await expect(other.restore(given(...parts))).rejects.toThrow("empty store");
      await other.close();
    });

    test("a copy that was cut, changed or is none restores nothing", async () => {
      await filled();
      const whole = await collected(store.backup());
      const other = await openStore(address());
      for (const bad of [
        whole.slice(0, whole.length - 30),
        whole.slice(10),
        new Uint8Array([1, 2, 3]),
        new Uint8Array(),
      ])
        await expect(other.restore(given(bad))).rejects.toThrow("no complete backup");
      expect(await other.list("job")).toEqual([]);
      await other.close();
    });

    test("a document travels with its history and photographs", async () => {
      const id = await filled();
      const bytes = await collected(store.exportDocument(id));
      const other = await openStore(address());
      expect(await other.importDocument(given(bytes))).toBe(id);
      expect(await other.history(id)).toEqual(await store.history(id));
      expect(await other.attachments(id)).toEqual(await store.attachments(id));
      expect(await other.people()).toEqual([]);
      const second = await other.importDocument(given(bytes));
      expect(second).not.toBe(id);
      expect((await other.read(second))?.text).toBe((await other.read(id))?.text);
      expect(await other.entries(second)).toHaveLength(1);
      await expect(other.importDocument(given(await collected(store.backup())))).rejects.toThrow("no complete backup");
      await other.close();
      await expect(collected(store.exportDocument("none"))).rejects.toThrow("no such document");
    });

    test("what was written is there when it is opened again", async () => {
      const { id } = await store.create("job", job("one"));
      await store.close();
      store = await openStore(place);
      expect((await store.read(id))?.text).toBe("one");
    });

    test.each(["1-documents", "2-field-entries"] as const)("a store at %s is brought up to date", async (upTo) => {
      const old = address();
      const before = await openStore(old, { upTo });
      const { id } = await before.create("job", job("kept"));
      if (upTo === "2-field-entries") await before.enter(entry("e1", id), adding("+"));
      else await expect(before.enter(entry("e1", id), adding("+"))).rejects.toThrow();
      await before.close();
      const after = await openStore(old);
      expect((await after.read(id))?.text).toMatch(/^kept/);
      await after.addPerson({ name: "Ada", role: "owner", passwordHash: "h" });
      await after.enter(entry("e2", id), adding("!"));
      expect((await after.read(id))?.text).toMatch(/!$/);
      await after.close();
    });
  });
};
