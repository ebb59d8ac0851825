import { readFileSync } from "node:fs";
import { firstLook } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { cardPlan } from "../../apps/web/src/field/card-calls.ts";
import { type CardId, cards } from "../../apps/web/src/field/cards.ts";
import {
  answered,
  type CardDraft,
  emptyDraft,
  isDone,
  readAnswers,
  stepState,
} from "../../apps/web/src/field/draft.ts";
import { entriesOfDraft, entryOfRound, entryOfStep } from "../../apps/web/src/field/entries.ts";
import { faultsAt, openLooks, stopOfCard } from "../../apps/web/src/field/rules.ts";
import { withEntries } from "../../apps/web/src/field/with-entries.ts";

const today = "2026-11-25";
const example = (name: string): string => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8");
const planOf = (card: CardId, text: string) => {
  const told = cardPlan(card, text, text, today);
  if (!told.ok) throw new Error(told.why);
  return told.value;
};
const begun = (card: CardId, text: string): CardDraft => emptyDraft("job", card, today, planOf(card, text).steps);
const say = (draft: CardDraft, step: string, answers: Readonly<Record<string, string>>): CardDraft =>
  Object.entries(answers).reduce(
    (before, [key, value]) => answered(before, before.steps.find(({ id }) => id === step)!, key, value),
    draft,
  );
const jobOf = (text: string) => {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(reading.issues.map(({ message }) => message).join(" "));
  return reading.job;
};

describe("what a card holds", () => {
  test("the drill card has a step for each hole of the survey plan, placed from two walls", () => {
    const { steps, open } = planOf("drill", example("nobody-has-measured"));
    expect(open).toBe("all");
    const [looks, first] = steps;
    expect(looks!.is).toBe("looks");
    expect(first!.figures.map(({ words }) => words)).toEqual([
      "from the left wall",
      "from the back wall",
      "mark on the bit",
    ]);
  });

  test.each(["stamp-at-the-door", "store-room-below"])("under a stop no hole has a place: %s", (name) => {
    for (const card of ["drill", "installation"] as const) {
      const { steps, open, stop } = planOf(card, example(name));
      expect(steps).toEqual([]);
      expect(open).not.toBe("all");
      expect(stop[0]).toMatch(/^No hole is drilled/);
    }
  });

  test("the torque card goes crosswise: every nut once, and never to a neighbour where a farther one is left", () => {
    const ids = planOf("torque", example("four-years-of-rounds")).steps.map(({ id }) => id);
    expect(ids[0]).toBe("round");
    expect(ids.slice(1).toSorted()).toEqual(["L1", "L2", "L3", "L4", "L5", "R1", "R2", "R3", "R4", "R5"]);
    expect(ids.slice(1, 3)).toEqual(["L1", "L5"]);
  });

  test("its questions are in the job's own units", () => {
    const units = (text: string) =>
      planOf("torque", text).steps[1]!.questions.flatMap((q) => (q.kind === "quantity" ? [q.unit] : []));
    expect(units(example("records-in-hand"))).toEqual(["lb-ft", "deg", "in"]);
    expect(units(`${example("records-in-hand")}\nunits: si\n`)).toEqual(["N·m", "deg", "mm"]);
  });

  test("a job that cannot be read is said in words", () => {
    const told = cardPlan("drill", "title: [", "title: [", today);
    expect(told).toMatchObject({ ok: false, why: expect.stringContaining("mistakes") });
  });
});

describe("what goes into the job", () => {
  const thin = example("nobody-has-measured");

  test("a hole becomes a reading that the page is judged by", () => {
    const draft = say(begun("drill", thin), "hole-1", {
      end: "dropped",
      thickness: "3 1/4",
      under: "clay",
      out: "dust",
    });
    const text = withEntries(thin, entriesOfDraft(draft));
    const [reading] = jobOf(text).floor.readings.slice(-1);
    expect(reading).toMatchObject({ method: "drill", end: "dropped", note: "came out: dust" });
    expect(reading!.thickness).toMatchObject({ known: true, value: 3.25 * 25.4 });
    expect(firstLook(jobOf(thin)).page.verdict).toBe("not-shown");
    expect(firstLook(jobOf(text)).page.verdict).toBe("fails");
  });

  test("corrected, it is the same reading", () => {
    const first = say(begun("drill", thin), "hole-1", { end: "through", thickness: "4", note: "wet" });
    const kept = {
      ...first,
      kept: { "hole-1": JSON.stringify(readAnswers(first.steps[1]!, first.answers["hole-1"]!)) },
    };
    const again = say(kept, "hole-1", { thickness: "4 1/4", note: "" });
    const text = withEntries(withEntries(thin, entriesOfDraft(first)), entriesOfDraft(again));
    const before = jobOf(thin).floor.readings.length;
    expect(jobOf(text).floor.readings).toHaveLength(before + 1);
    expect(jobOf(text).floor.readings.at(-1)!.thickness).toMatchObject({ value: 4.25 * 25.4 });
  });

  test("the mark flush and still in concrete is at least as deep as the mark", () => {
    const draft = say(begun("drill", thin), "hole-1", { end: "still-concrete" });
    expect(draft.answers["hole-1"]!.thickness).toBe("5 1/2 in");
  });

  test("an answer taken back is unknown, not left as it was", () => {
    const draft = say(begun("installation", example("records-in-hand")), "L1", { depth: "4 1/2", clean: "yes" });
    const kept = { ...draft, kept: { L1: JSON.stringify({ depth: "4 1/2 in", clean: "yes" }) } };
    const entry = entryOfStep("installation", say(kept, "L1", { clean: "" }), draft.steps[1]!);
    expect(entry!.add[0]!.entry).toEqual({ anchor: "L1", depth: "4 1/2 in", clean: "unknown" });
  });

  test("a round in part is one visit, again it is the same visit", () => {
    const text = example("records-in-hand");
    const first = say(say(begun("torque", text), "round", { wrench: "W" }), "L1", { found: "45", turned: "60" });
    const part = withEntries(text, [entryOfRound(first)!]);
    const whole = withEntries(part, [entryOfRound(say(first, "R1", { found: "100 N·m", state: "holds" }))!]);
    expect(jobOf(part).visits).toHaveLength(1);
    const [visit, ...more] = jobOf(whole).visits;
    expect(more).toEqual([]);
    expect(visit).toMatchObject({ date: today, wrench: "W" });
    expect(visit!.readings.map(({ anchor }) => anchor)).toEqual(["L1", "R1"]);
    expect(visit!.readings[0]!.found).toMatchObject({ written: "45 lb-ft" });
  });

  test("a truck, the thermometer and a cover that comes off again", () => {
    const text = example("new-heated-shop");
    const day = say(begun("pour", text), "pour-day", { "pour.date": today });
    const truck = say(day, "truck-1", { ticket: "1187", slump: "4", water: "none" });
    const cover = say(say(truck, "cover-on", { what: "blanket", fromDay: "0", holds: "50" }), "thermometer", {
      low: "41",
      high: "60",
    });
    const poured = withEntries(text, entriesOfDraft(cover));
    const off = say(begun("pour", poured), "cover-off", { what: "blanket", toDay: "6" });
    const { pour } = jobOf(withEntries(poured, entriesOfDraft(off)));
    expect(pour).toMatchObject({ date: today, tickets: [{ load: "truck 1", ticket: "1187", water: "none" }] });
    expect(pour!.covers).toMatchObject([{ what: "blanket", fromDay: 0, toDay: 6 }]);
    expect(pour!.days).toMatchObject([{ on: today, low: 5 }]);
  });

  test.each(cards.map(({ id }) => id))("nothing said on the %s card is no entry and no fault", (card) => {
    const draft = begun(card, example("records-in-hand"));
    expect(entriesOfDraft(draft)).toEqual([]);
    for (const step of draft.steps) {
      expect(faultsAt(draft, card, step)).toEqual({});
      expect(stepState(draft, step)).toBe("open");
    }
    expect(isDone(draft)).toBe(false);
  });
});

describe("what a card says at once", () => {
  test("hollow at an anchor, or a bolt that spins, is out of service", () => {
    const text = example("records-in-hand");
    for (const answer of [{ sound: "hollow" }, { state: "spins" }, { state: "snapped" }] as const) {
      const live = withEntries(text, entriesOfDraft(say(begun("torque", text), "R2", answer)));
      const { stop, says } = planOf("torque", live);
      expect(stop[0]).toMatch(/^Out of service today/);
      expect(says.R2!.weight).toBe("stop");
    }
    expect(planOf("torque", text).stop).toEqual([]);
  });

  test("steel, plastic, water under the bit, or a hollow ends the drilling", () => {
    const draft = begun("drill", example("nobody-has-measured"));
    for (const answers of [{ out: "sparks, steel" }, { out: "plastic or wire" }, { out: "water" }, { under: "void" }])
      expect(stopOfCard(say(draft, "hole-1", answers as unknown as Record<string, string>))?.words).toMatch(/^Stop\./);
    expect(stopOfCard(say(draft, "hole-1", { out: "dust", under: "gravel" }))).toBeUndefined();
  });

  test("what the drill met ends it, a cut bar only until the hole has its depth", () => {
    const draft = begun("installation", example("records-in-hand"));
    expect(stopOfCard(say(draft, "R4", { met: "tendon", depth: "4 1/2" }))?.step).toBe("R4");
    expect(stopOfCard(say(draft, "R4", { met: "bar" }))?.step).toBe("R4");
    expect(stopOfCard(say(draft, "R4", { met: "bar", depth: "2 1/2" }))?.step).toBe("R4");
    expect(stopOfCard(say(draft, "R4", { met: "bar", depth: "4 1/2" }))).toBeUndefined();
    expect(stopOfCard(say(draft, "R4", { met: "nothing" }))).toBeUndefined();
  });

  test("a depth without how it ended is one fault, where the missing answer is", () => {
    const draft = say(begun("drill", example("nobody-has-measured")), "hole-1", { thickness: "4" });
    expect(Object.keys(faultsAt(draft, "drill", draft.steps[1]!))).toEqual(["end"]);
  });

  test("a look that is not clear is told at every hole", () => {
    const draft = begun("drill", example("nobody-has-measured"));
    expect(openLooks(draft, draft.steps)).toHaveLength(1);
    expect(openLooks(say(draft, "look-first", { "look-0": "clear" }), draft.steps)).toEqual([]);
    expect(openLooks(say(draft, "look-first", { "look-0": "open" }), draft.steps)).toHaveLength(1);
  });
});
