import { mergeTexts } from "@floorworthy/job/editing";
import { writtenTree } from "@floorworthy/job/listing";
import { describe, expect, test } from "vitest";

const base = "title: A # kept\nfloor:\n  thickness: 4 in\n  readings:\n    - { thickness: 5 in }\nvisits: []\n";
const change = (from: string, to: string) => base.replace(from, to);

describe("two people on one job", () => {
  test("different places: both stay, and the comments", () => {
    const merged = mergeTexts(base, change("4 in", "4 1/4 in"), change("title: A", "title: B"));
    expect(merged).toMatchObject({ ok: true });
    expect(merged.ok && merged.text).toBe(
      "title: B # kept\nfloor:\n  thickness: 4 1/4 in\n  readings:\n    - { thickness: 5 in }\nvisits: []\n",
    );
  });
  test("the same place written differently is a clash", () =>
    expect(mergeTexts(base, change("4 in", "5 in"), change("4 in", "6 in"))).toEqual({
      ok: false,
      paths: ["floor.thickness"],
    }));
  test.each([
    ["mine", "title: B # kept\nfloor:\n  thickness: 5 in\n"],
    ["theirs", "title: B # kept\nfloor:\n  thickness: 6 in\n"],
  ] as const)("%s goes on where they clash, and all else that either wrote stays", (which, begin) => {
    const mine = change("4 in", "5 in").replace("title: A", "title: B");
    const theirs = change("4 in", "6 in").replace("visits: []", "visits: [{ date: 2026-02-02 }]");
    const merged = mergeTexts(base, mine, theirs, which);
    expect(merged.ok && merged.text.startsWith(begin)).toBe(true);
    expect(merged.ok && merged.text).toContain("2026-02-02");
  });
  test("the same place written alike is none", () =>
    expect(mergeTexts(base, change("4 in", "5 in"), change("4 in", "5 in")).ok).toBe(true));
  test("entries added by both all stay", () => {
    const merged = mergeTexts(
      base,
      change("visits: []", "visits: [{ date: 2026-01-01 }]"),
      change("visits: []", "visits: [{ date: 2026-02-02 }]"),
    );
    expect(merged.ok && writtenTree(merged.text)).toMatchObject({
      visits: [{ date: "2026-02-02" }, { date: "2026-01-01" }],
    });
  });
  test("an entry taken away while the other changed it is a clash", () =>
    expect(mergeTexts(base, change("    - { thickness: 5 in }\n", "    []\n"), change("5 in", "6 in")).ok).toBe(false));
  test("a group new in mine arrives", () => {
    const merged = mergeTexts(base, `${base}columns: { left: [1 ft, 2 ft] }\n`, change("title: A", "title: B"));
    expect(merged.ok && writtenTree(merged.text)).toMatchObject({ title: "B", columns: { left: ["1 ft", "2 ft"] } });
  });
  test("a file that cannot be read is never merged", () => expect(mergeTexts(base, "a: [", base).ok).toBe(false));
});
