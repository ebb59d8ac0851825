/** What a piece of text speaks of. The last one named before a value rules it. */
export type Subject = "concrete" | "plate" | "hole" | "anchor" | "shim" | "column" | "lift" | "other";

const words: Readonly<Record<Subject, string>> = {
  concrete: "concrete|slab|foundations?|ground plate|cement|floor(?! plate)|footings?|\\bpads? of concrete",
  plate: "(?:base|foot) ?-?plates?|column bases?|\\bbases?\\b",
  hole: "\\bholes?\\b|\\bbores?\\b|\\bdrill(?:ed|ing)?\\b|\\bbits?\\b",
  anchor: "anchors?(?:'|’)?\\b|anchoring|dowels?|studs\\b|(?:expansion|wedge|anchor|foundation) bolts?",
  shim: "shims?\\b|shimming",
  column: "columns?\\b|posts?\\b|towers?\\b",
  lift: "\\blifts?\\b",
  other:
    "(?:cross ?)?beams?\\b|cables?\\b|ropes?\\b|chains?\\b|hoses?\\b|hydraulic\\w*|\\boil\\b|fluid|pumps?\\b|motors?\\b|power unit|carriages?\\b|arm pins?|arm restraints?|\\barms?\\b(?= (?:bolts|pins|restraint))|vehicles?\\b|locks?\\b|latch(?:es)?|catch(?:es)?|crates?\\b|packages?\\b|shipping|slid(?:e|ing) (?:blocks?|pieces?)|gliding pads?|valves?\\b|switch\\w*|warranty|bystanders?|air supply|jacks?\\b|adapters?\\b|fork ?lifts?|fork truck|gauge|thread\\b|sheaves?|pulleys?",
};

const patterns = (Object.entries(words) as [Subject, string][]).map(
  ([subject, pattern]) => [subject, new RegExp(pattern, "giu")] as const,
);

export interface Mention {
  readonly subject: Subject;
  readonly from: number;
  readonly to: number;
}

/** Everything a text speaks of, in order. */
export const mentionsIn = (text: string): readonly Mention[] =>
  patterns
    .flatMap(([subject, pattern]) =>
      [...text.matchAll(pattern)].map((m) => ({ subject, from: m.index, to: m.index + m[0].length })),
    )
    .sort((a, b) => a.from - b.from || b.to - a.to)
    .filter((m, i, all) => !all.some((o, j) => j < i && o.to > m.from));
