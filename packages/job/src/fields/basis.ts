import type { Node } from "yaml";
import { type Basis, type Unknown, unknown } from "../fact.ts";
import { at, type Place, report } from "../reading/place.ts";
import { date } from "./date.ts";
import type { Entry } from "./entries.ts";
import { scalarText } from "./scalar-text.ts";

/** Which keys tell of which basis. */
const keysOf = {
  measured: ["by", "on", "how"],
  documented: ["document", "page", "line", "picture"],
  assumed: ["why"],
  stated: [],
  unknown: ["why"],
} as const;

type BasisWord = keyof typeof keysOf;
const words = Object.keys(keysOf) as BasisWord[];

/** Keys any fact may carry beside its value. */
export const basisKeys: readonly string[] = ["basis", ...new Set(words.flatMap((word) => keysOf[word]))];

export type WrittenBasis = Basis | { readonly kind: "unknown"; readonly why: string | undefined };

const textOf = (entries: ReadonlyMap<string, Entry>, key: string, place: Place): string | undefined => {
  const node = entries.get(key)?.value;
  if (!node) return undefined;
  if (key === "on") return date("").read(node, at(place, key));
  return scalarText(node as Node, at(place, key), "a text", "Write the text after the colon.")?.trim() || undefined;
};

const wordWritten = (entries: ReadonlyMap<string, Entry>, place: Place): BasisWord | undefined => {
  const entry = entries.get("basis");
  if (!entry?.value) return undefined;
  const text = scalarText(entry.value, at(place, "basis"), "one word", `Write one of: ${words.join(", ")}.`);
  if (text === undefined || words.includes(text as BasisWord)) return text as BasisWord | undefined;
  report(at(place, "basis"), entry.value, "wrong-word", {
    got: text,
    message: `"${text.slice(0, 60)}" is not a basis.`,
    hint: `Write one of: ${words.join(", ")}.`,
  });
  return undefined;
};

const wordImplied = (entries: ReadonlyMap<string, Entry>): BasisWord | undefined =>
  (["measured", "documented", "assumed"] as const).find((word) => keysOf[word].some((key) => entries.has(key)));

/** How a fact written as a group is known: by its word, else by its telling keys, else as its surroundings. */
export const readBasis = (entries: ReadonlyMap<string, Entry>, place: Place): WrittenBasis => {
  const word = wordWritten(entries, place) ?? wordImplied(entries);
  if (word === undefined) return place.basis;
  const own: readonly string[] = keysOf[word];
  for (const key of basisKeys) {
    if (key === "basis" || own.includes(key) || !entries.has(key)) continue;
    const belongs = words.find((other) => (keysOf[other] as readonly string[]).includes(key))!;
    report(at(place, key), entries.get(key)!.key, "basis-mismatch", {
      got: key,
      message: `"${key}" tells of a value that is ${belongs}, and this one is ${word}.`,
      hint: own.length > 0 ? `Beside basis ${word} write ${own.join(", ")}.` : `Take it away or change the basis.`,
    });
  }
  const [why, by, on, how] = ["why", "by", "on", "how"].map((key) =>
    own.includes(key) ? textOf(entries, key, place) : undefined,
  );
  if (word === "measured") return { kind: word, ...(by && { by }), ...(on && { on }), ...(how && { how }) };
  if (word === "unknown") return { kind: word, why };
  if (word === "stated") return { kind: word };
  if (word === "assumed") {
    if (why === undefined)
      report(place, entries.get("basis")?.value, "assumed-without-why", {
        message: "An assumed value does not say why.",
        hint: "Add why: and the reason.",
      });
    return { kind: word, why: why ?? "" };
  }
  const [document, page, line, picture] = ["document", "page", "line", "picture"].map((key) =>
    textOf(entries, key, place),
  );
  return {
    kind: word,
    ...(document && { document }),
    ...(page && { page }),
    ...(line && { line }),
    ...(picture && { picture }),
  };
};

/** An unknown fact that keeps the reason written beside it. */
export const unknownWith = (basis: WrittenBasis): Unknown =>
  (basis.kind === "unknown" || basis.kind === "assumed") && basis.why ? { known: false, note: basis.why } : unknown;
