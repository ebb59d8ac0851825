import type { CaseReactions } from "../assessment.ts";

type Base = CaseReactions["bases"][number];

/** One base under one case that governs something, and what. */
export interface GoverningLoad {
  readonly caseName: string;
  readonly base: Base;
  readonly governs: readonly string[];
}

const measures: readonly { readonly words: string; readonly of: (base: Base) => number }[] = [
  { words: "P", of: ({ P }) => P },
  { words: "moment across", of: ({ My }) => Math.abs(My) },
  { words: "moment along", of: ({ Mx }) => Math.abs(Mx) },
  { words: "moment per load", of: ({ P, Mx, My }) => (P > 0 ? Math.hypot(Mx, My) / P : 0) },
  { words: "shear", of: ({ Vx, Vy }) => Math.hypot(Vx, Vy) },
];

/** The few rows that hold every extreme: of all cases, the base with the largest of each measure, once each. */
export const governingLoads = (cases: readonly CaseReactions[]): readonly GoverningLoad[] => {
  const rows = cases.flatMap(({ name, bases }) => bases.map((base) => ({ caseName: name, base })));
  const found = new Map<(typeof rows)[number], string[]>();
  for (const { words, of } of measures) {
    const most = rows.reduce<(typeof rows)[number] | undefined>(
      (best, row) => (best === undefined || of(row.base) > of(best.base) * (1 + 1e-9) ? row : best),
      undefined,
    );
    if (most && of(most.base) > 0) found.set(most, [...(found.get(most) ?? []), words]);
  }
  return [...found].map(([row, governs]) => ({ ...row, governs }));
};
