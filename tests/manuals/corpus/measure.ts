/** Reads whole families of invented manuals and counts what was found. */
import { type Candidate, type FieldName, layOut, type PdfLibrary, readGlyphs, readingOf } from "@floorworthy/manuals";
import { pdfForNode } from "@floorworthy/manuals/node";
import { emptyTally, type Miss, score, type Tally } from "./score.ts";
import type { Family } from "./story.ts";

export interface Measured {
  readonly byFamily: ReadonlyMap<string, Tally>;
  readonly byField: ReadonlyMap<FieldName, Tally>;
  readonly total: Tally;
  readonly missed: readonly (Miss & { readonly family: string })[];
  readonly wrong: readonly (Candidate & { readonly family: string })[];
}

const add = (to: Tally, more: Tally): void => {
  to.wanted += more.wanted;
  to.found += more.found;
  to.sure += more.sure;
  to.sureRight += more.sureRight;
};

const tallyAt = <K>(map: Map<K, Tally>, key: K): Tally => {
  const held = map.get(key) ?? emptyTally();
  map.set(key, held);
  return held;
};

export const pdfLibrary = async (): Promise<PdfLibrary> => (await pdfForNode()).pdf;

export const laidOut = async (bytes: Uint8Array) => {
  const glyphs = await readGlyphs(await pdfLibrary(), bytes);
  if (!glyphs.ok) throw new Error(glyphs.trouble.message);
  return layOut(glyphs.pages);
};

export const measure = async (families: readonly Family[], seeds: readonly number[]): Promise<Measured> => {
  const pdf = await pdfLibrary();
  const byFamily = new Map<string, Tally>();
  const byField = new Map<FieldName, Tally>();
  const total = emptyTally();
  const missed: (Miss & { family: string })[] = [];
  const wrong: (Candidate & { family: string })[] = [];
  for (const family of families)
    for (const system of family.systems)
      for (const seed of seeds) {
        const manual = await family.build(seed, system);
        const reading = readingOf(await readGlyphs(pdf, manual.bytes));
        if (!reading.ok) throw new Error(`${family.name}: ${reading.trouble.message}`);
        const scored = score(manual, reading.candidates);
        for (const [field, tally] of scored.byField) {
          add(tallyAt(byField, field), tally);
          add(tallyAt(byFamily, family.name), tally);
          add(total, tally);
        }
        missed.push(...scored.missed.map((m) => ({ ...m, family: family.name })));
        wrong.push(...scored.wrong.map((c) => ({ ...c, family: family.name })));
      }
  return { byFamily, byField, total, missed, wrong };
};

const percent = (part: number, whole: number): string => (whole === 0 ? "—" : `${((100 * part) / whole).toFixed(1)} %`);

const cells = ({ wanted, found, sure, sureRight }: Tally): string =>
  `${wanted} | ${percent(found, wanted)} | ${sure} | ${percent(sureRight, sure)}`;

/** Two tables in Markdown: by family and by field. */
export const tablesOf = ({ byFamily, byField, total }: Measured): string =>
  [
    "| family | values | found | marked sure | of these right |",
    "|---|---|---|---|---|",
    ...[...byFamily].map(([name, tally]) => `| ${name} | ${cells(tally)} |`),
    `| all | ${cells(total)} |`,
    "",
    "| line of the sheet | values | found | marked sure | of these right |",
    "|---|---|---|---|---|",
    ...[...byField].map(([name, tally]) => `| ${name} | ${cells(tally)} |`),
  ].join("\n");
