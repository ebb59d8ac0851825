import type { CardId } from "./cards.ts";
import { type Answers, answersAt, type CardDraft, readAnswers } from "./draft.ts";
import type { Plain, Step } from "./question.ts";

/** What is put into the job: as the server takes it (POST /api/jobs/:id/entries). */
export interface EntryBody {
  readonly kind: "drill reading" | "hole record" | "torque round" | "pour note";
  readonly set: readonly { readonly path: string; readonly value: string }[];
  readonly add: readonly {
    readonly list: string;
    readonly entry: { readonly [key: string]: Plain };
    readonly by: readonly string[];
  }[];
}

type Group = { readonly [key: string]: Plain };

const some = (group: Answers): boolean => Object.keys(group).length > 0;

/** Only these keys. */
const only = (group: Answers, ...keys: readonly string[]): Answers =>
  Object.fromEntries(Object.entries(group).filter(([key]) => keys.includes(key)));

/** Keys handed over before and taken back since are said to be unknown. */
const takenBack = (draft: CardDraft, step: Step, read: Answers): Answers => {
  const kept = draft.kept[step.id];
  const before: Answers = kept === undefined ? {} : JSON.parse(kept);
  return Object.fromEntries(
    Object.keys(before)
      .filter((key) => !(key in read))
      .map((key) => [key, "unknown"]),
  );
};

/** What a step puts into the job; undefined while nothing is said. */
export const entryOfStep = (card: CardId, draft: CardDraft, step: Step): EntryBody | undefined => {
  const said = readAnswers(step, answersAt(draft, step.id));
  const read = { ...takenBack(draft, step, said), ...said };
  if (step.is === "looks" || !some(read)) return undefined;
  switch (card) {
    case "drill":
      return drillEntry(step, read);
    case "installation":
      return holeEntry(step, read);
    case "pour":
      return pourEntry(step, read);
    case "torque":
      return undefined;
  }
};

const drillEntry = (step: Step, read: Answers): EntryBody => {
  const known = (key: string) => (read[key] === "unknown" ? undefined : read[key]);
  const [x, y] = step.fixed.at as readonly string[];
  const out = known("out");
  const words = [out && `came out: ${out}`, known("note")].filter(Boolean).join("; ");
  const entry: Group = {
    ...step.fixed,
    at: [known("x") ?? x!, known("y") ?? y!],
    thickness: read.thickness ?? "unknown",
    method: "drill",
    ...only(read, "end", "under", "layer"),
    ...(words !== "" && { note: words }),
  };
  return { kind: "drill reading", set: [], add: [{ list: "floor.readings", entry, by: ["at"] }] };
};

/** Facts that have one place in the file. */
const facts = (kind: EntryBody["kind"], read: Answers): EntryBody => ({
  kind,
  set: Object.entries(read).map(([path, value]) => ({ path, value })),
  add: [],
});

const holeEntry = (step: Step, read: Answers): EntryBody => {
  if (step.fixed.list === "") return facts("hole record", read);
  const entry = { ...step.fixed, ...read };
  return { kind: "hole record", set: [], add: [{ list: "installation.holes", entry, by: ["anchor"] }] };
};

const pourEntry = (step: Step, read: Answers): EntryBody => {
  const list = step.fixed.list as string;
  if (list === "") return facts("pour note", read);
  const entry = { ...(step.fixed.entry as Group), ...read };
  return { kind: "pour note", set: [], add: [{ list, entry, by: [step.fixed.by as string] }] };
};

/** The whole round, also a part of one, as one visit; undefined while no nut was read. */
export const entryOfRound = (draft: CardDraft): EntryBody | undefined => {
  const [first, ...nuts] = draft.steps;
  if (!first) return undefined;
  const round = readAnswers(first, answersAt(draft, first.id));
  const readings = nuts.flatMap((step) => {
    const said = readAnswers(step, answersAt(draft, step.id));
    const read = { ...takenBack(draft, step, said), ...said };
    return some(read) ? [{ ...step.fixed, ...read }] : [];
  });
  if (readings.length === 0) return undefined;
  const entry = { date: draft.date, ...round, readings };
  return { kind: "torque round", set: [], add: [{ list: "visits", entry, by: ["date", "anchor"] }] };
};

/** Everything typed on this card that is not handed over yet. */
export const entriesOfDraft = (draft: CardDraft): readonly EntryBody[] => {
  const round = draft.card === "torque" ? entryOfRound(draft) : undefined;
  if (round) return [round];
  return draft.steps.flatMap((step) => {
    const read = JSON.stringify(readAnswers(step, answersAt(draft, step.id)));
    return draft.kept[step.id] === read ? [] : (entryOfStep(draft.card, draft, step) ?? []);
  });
};
