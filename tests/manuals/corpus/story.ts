/** What a manual says, before it is laid out, and the truth kept beside it. */
import type { FieldName } from "@floorworthy/manuals";
import { baseOf, type InventedLift, type Said, type System } from "./invented-lift.ts";
import type { Voice } from "./voice.ts";
import { type Style, writeAmount, writeSlope } from "./write-value.ts";

export interface Truth {
  readonly field: FieldName;
  /** absent: for every model */
  readonly model?: string;
  readonly value: number | string;
}

export interface Passage {
  readonly heading: string;
  readonly sentences: readonly string[];
}

export interface Telling {
  readonly lift: InventedLift;
  readonly voice: Voice;
  readonly style: Style;
  readonly truth: Truth[];
}

export const telling = (lift: InventedLift, voice: Voice, style: Style): Telling => ({ lift, voice, style, truth: [] });

export const keep = (t: Telling, field: FieldName, said: Said, model?: string): void => {
  t.truth.push({ field, value: baseOf(said), ...(model !== undefined && { model }) });
};

/** A fact as this manual prints it. */
export const print = (t: Telling, field: FieldName, said: Said): string =>
  typeof said === "string"
    ? t.voice.words[said]!
    : field === "asks.slope"
      ? writeSlope(said.n, t.lift.system, t.style)
      : said.unit === ""
        ? String(said.n)
        : writeAmount(said, t.style);

const fill = (t: Telling, template: string, model: string | undefined): string | undefined => {
  const own = t.lift.models.find(({ name }) => name === model)?.own;
  let whole = true;
  const text = template.replace(/\{([\w.]+)\}/g, (_, field: FieldName | "model") => {
    if (field === "model") return model!;
    const said = own?.get(field) ?? t.lift.shared.get(field);
    if (said === undefined) whole = false;
    else keep(t, field, said, own?.has(field) ? model : undefined);
    return said === undefined ? "" : print(t, field, said);
  });
  return whole ? text : undefined;
};

export const sentencesOf = (t: Telling, templates: readonly string[], model?: string): readonly string[] =>
  templates.map((template) => fill(t, template, model)).filter((text) => text !== undefined);

/** Everything the voice says about the lift: shared sections, then one passage per model. */
export const passagesOf = (t: Telling, modelHeading: (model: string) => string): readonly Passage[] => [
  ...t.voice.sections.map(({ heading, sentences }) => ({ heading, sentences: sentencesOf(t, sentences) })),
  ...t.lift.models.map(({ name }) => ({
    heading: modelHeading(name),
    sentences: sentencesOf(t, t.voice.perModel, name),
  })),
];

/** Label and said value of every shared fact the voice has a label for. */
export const sharedEntries = (
  t: Telling,
): readonly { readonly field: FieldName; readonly label: string; readonly said: Said }[] =>
  [...t.lift.shared].flatMap(([field, said]) => {
    const label = t.voice.labels[field];
    return label === undefined ? [] : [{ field, label, said }];
  });

export const ownEntries = (t: Telling): readonly { readonly field: FieldName; readonly label: string }[] =>
  [...t.lift.models[0]!.own.keys()].flatMap((field) => {
    const label = t.voice.labels[field];
    return label === undefined ? [] : [{ field, label }];
  });

export const ownSaid = (t: Telling, model: string, field: FieldName): Said =>
  t.lift.models.find(({ name }) => name === model)!.own.get(field)!;

export interface InventedManual {
  readonly bytes: Uint8Array;
  readonly truth: readonly Truth[];
  readonly lift: InventedLift;
}

export interface Family {
  readonly name: string;
  readonly set: "developing" | "report";
  readonly systems: readonly System[];
  readonly build: (seed: number, system: System) => Promise<InventedManual>;
}
