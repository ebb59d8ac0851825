import { type Written, writtenFacts } from "@floorworthy/job/listing";
import { understood } from "../quantities/understood.ts";
import { endOf, type FactKind, factKinds, isOfKind } from "./fact-table.ts";
import type { FactField, Mistake } from "./messages.ts";

/** The facts of a file the page offers for typing, each with what was understood or what is wrong with it. */
export const factsOf = (text: string, mistakes: readonly Mistake[]): readonly FactField[] => {
  const written = writtenFacts(text);
  return factKinds.flatMap((kind) => {
    const there = written.filter(({ path }) => isOfKind(path, kind));
    const offered = there.length === 0 && kind.offer === "always" ? [{ path: kind.path, written: "" }] : there;
    return offered.map((fact, i) => field(kind, fact, offered.length > 1 ? ` ${i + 1}` : "", written, mistakes));
  });
};

const field = (
  kind: FactKind,
  { path, written }: Written,
  count: string,
  all: readonly Written[],
  mistakes: readonly Mistake[],
): FactField => {
  const sense = understood(written, kind.unit);
  const said = mistakes.find((mistake) => mistake.path === path || mistake.path === `${path}.value`);
  const end = endOf(path);
  const named = beside(path, all, "name") ?? beside(path, all, "near");
  return {
    path,
    group: kind.group,
    label: `${kind.label}${count}${named ? `, ${named}` : ""}${end ? `, ${end}` : ""}`,
    written,
    understood: "read" in sense ? sense.read : "",
    mistake: said
      ? `${said.message}${said.hint ? ` ${said.hint}` : ""}`
      : "mistake" in sense
        ? sense.mistake
        : undefined,
  };
};

/** What stands beside a fact in the same list entry. */
const beside = (path: string, all: readonly Written[], key: string): string | undefined => {
  const entry = /^(.*\[\d+\])\.[^.]+$/.exec(path)?.[1];
  return entry === undefined ? undefined : all.find((other) => other.path === `${entry}.${key}`)?.written;
};
