/** Layouts kept for the report: written before the reader, and not looked at while it was tuned. */

import { freshPage, para, row, startFlow } from "../flow.ts";
import { type InventedLift, inventLift, type System } from "../invented-lift.ts";
import { A4, LEGAL, LETTER, Pen } from "../pen.ts";
import {
  type Family,
  type InventedManual,
  keep,
  ownEntries,
  ownSaid,
  passagesOf,
  print,
  sharedEntries,
  type Telling,
  telling,
} from "../story.ts";
import type { Voice } from "../voice.ts";
import { type Style, writeAmount, writeBare } from "../write-value.ts";
import { reportVoices } from "./voices.ts";

const pickOf = <T>(list: readonly T[], seed: number): T => list[seed % list.length]!;

const begin = (
  seed: number,
  system: System,
  models: number,
  voices: readonly Voice[],
  styles: readonly Style[],
): Telling => {
  const lift = inventLift(seed, system, models);
  return telling(lift, pickOf(voices, seed), pickOf(styles, Math.floor(seed / 2)));
};

const done = async (pen: Pen, t: Telling): Promise<InventedManual> => ({
  bytes: await pen.bytes(),
  truth: t.truth,
  lift: t.lift,
});

const titleOf = (lift: InventedLift): string =>
  `${lift.name} two-post lift, ${lift.models.length > 1 ? "models" : "model"} ${lift.models.map(({ name }) => name).join(", ")}`;

const { steady, brisk, translated } = reportVoices;
const inchStyles: readonly Style[] = ["plain", "marks", "vulgar", "slash"];
const siStyles: readonly Style[] = ["plain", "marks", "slash"];
const stylesOf = (system: System): readonly Style[] => (system === "si" ? siStyles : inchStyles);

/** Key words in the margin, text beside them; long pages, serif. */
const marginKeys: Family = {
  name: "margin keys",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [steady, brisk], stylesOf(system));
    const pen = new Pen({ size: LEGAL, face: "serif" });
    const flow = startFlow(
      pen,
      { left: 190, right: 60, top: 80, bottom: 80 },
      `${t.lift.name} - installation`,
      (p) => `Page ${p}`,
    );
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 18, font: "bold", after: 20 });
    for (const text of t.voice.noise.slice(0, 4)) para(flow, text, { size: 11 });
    freshPage(flow);
    for (const { heading, sentences } of passagesOf(t, (model) => `About ${model}`)) {
      flow.y += 10;
      if (flow.y > flow.bottom - 160) freshPage(flow);
      pen.set(heading, 50, flow.y, 120, { size: 11, font: "bold" });
      para(flow, sentences.join(" "), { size: 11, leading: 1.3, after: 26 });
    }
    freshPage(flow);
    for (const text of t.voice.noise.slice(4)) para(flow, text, { size: 11 });
    return done(pen, t);
  },
};

/** A table on a turned page, one model a row, heads that wrap. */
const turnedRows: Family = {
  name: "turned page, models in rows",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 3, [steady, brisk, translated], stylesOf(system));
    const pen = new Pen({ size: LETTER });
    const flow = startFlow(pen, { left: 60, right: 60, top: 80, bottom: 80 }, "", (p) => String(p));
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    for (const text of t.voice.noise) para(flow, text);
    freshPage(flow);
    for (const { heading, sentences } of passagesOf({ ...t, lift: { ...t.lift, models: [] } }, String)) {
      para(flow, heading, { font: "bold", size: 12 });
      for (const text of sentences) para(flow, `• ${text}`, { indent: 12 });
    }
    pen.sheet();
    const { paper } = pen;
    paper.save();
    paper.translate(0, LETTER[1]);
    paper.rotate(-90);
    const entries = ownEntries(t);
    const edges = [50, 130, ...entries.map((_, i) => 130 + ((i + 1) * 600) / entries.length)];
    const turned = { ...flow, y: 90, bottom: 560 };
    pen.line("Figures by model", 50, 60, { size: 13, font: "bold" });
    row(turned, ["Model", ...entries.map(({ label }) => label)], edges, { font: "bold", size: 8.5 });
    for (const { name } of t.lift.models)
      row(
        turned,
        [
          name,
          ...entries.map(({ field }) => {
            const said = ownSaid(t, name, field);
            keep(t, field, said, name);
            return print(t, field, said);
          }),
        ],
        edges,
        { size: 8.5 },
      );
    paper.restore();
    return done(pen, t);
  },
};

/** Two columns of type with hyphens and ligatures, a table across both, notes at the foot. */
const mixedColumns: Family = {
  name: "two columns, table across, foot notes",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 2, [steady, translated], stylesOf(system));
    const pen = new Pen({ size: A4, face: "condensed" });
    const flow = startFlow(
      pen,
      { left: 48, right: 48, top: 76, bottom: 90 },
      `${t.lift.name.toUpperCase()}   Assembly and care`,
      (p) => `${p}`,
    );
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 17, font: "bold", after: 14 });
    const ligature = (text: string) => text.replace(/ffi/g, "ﬃ").replace(/fi/g, "ﬁ").replace(/fl/g, "ﬂ");
    const [first, second] = t.lift.models;
    const [thick, more] = [ownSaid(t, first!.name, "asks.thickness"), ownSaid(t, second!.name, "asks.thickness")];
    const texts = passagesOf({ ...t, lift: { ...t.lift, models: [] } }, String).flatMap(({ heading, sentences }) => [
      heading,
      ...sentences,
    ]);
    const half = (flow.right - flow.left - 22) / 2;
    let [x, y] = [flow.left, flow.y];
    const filled = [...t.voice.noise.slice(0, 4), ...texts, ...t.voice.noise.slice(4)];
    for (const text of filled) {
      if (y > flow.bottom - 70) {
        if (x === flow.left) [x, y] = [flow.left + half + 22, flow.page === 1 ? flow.y : flow.top];
        else {
          freshPage(flow);
          [x, y] = [flow.left, flow.top];
        }
      }
      const heading = t.voice.sections.some((s) => s.heading === text);
      y =
        pen.set(ligature(text), x, y, half, {
          size: heading ? 11 : 10,
          font: heading ? "bold" : "regular",
          hyphens: "some",
          align: heading ? "left" : "spread",
        }) + 7;
    }
    freshPage(flow);
    para(flow, "Figures of the models", { font: "bold", size: 12 });
    const edges = [flow.left, flow.left + 230, flow.left + 365, flow.right];
    row(flow, ["", first!.name, second!.name], edges, { font: "bold" });
    for (const { field, label } of ownEntries(t)) {
      if (field === "asks.thickness") {
        row(flow, [`${label} ¹`, print(t, field, thick), print(t, field, thick)], edges);
        keep(t, field, thick, first!.name);
        keep(t, field, more, second!.name);
        continue;
      }
      row(
        flow,
        [
          label,
          ...t.lift.models.map(({ name }) => {
            const said = ownSaid(t, name, field);
            keep(t, field, said, name);
            return print(t, field, said);
          }),
        ],
        edges,
      );
    }
    flow.y += 6;
    para(flow, `¹ ${print(t, "asks.thickness", more)} for model ${second!.name}.`, { size: 8 });
    return done(pen, t);
  },
};

/** Boxes with centred text and both unit systems side by side. */
const bothUnits: Family = {
  name: "both unit systems, centred boxes",
  set: "report",
  systems: ["inch-pound"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [steady, brisk], ["plain", "marks", "vulgar"]);
    const pen = new Pen({ size: LETTER, face: "embedded" });
    const flow = startFlow(pen, { left: 70, right: 70, top: 80, bottom: 80 }, "", (p) => `${p} / 4`);
    const other: Readonly<Record<string, readonly [number, string]>> = {
      in: [25.4, "mm"],
      lb: [0.45359237, "kg"],
      psi: [0.00689476, "MPa"],
      "lb-ft": [1.35582, "N·m"],
    };
    const both: Telling = { ...t };
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold", align: "centre" });
    for (const text of t.voice.noise.slice(0, 3)) para(flow, text, { align: "centre" });
    for (const { heading, sentences } of passagesOf(both, (model) => `Model ${model}`)) {
      flow.y += 16;
      if (flow.y > flow.bottom - 170) freshPage(flow);
      const top = flow.y - 6;
      para(flow, heading.toUpperCase(), { font: "bold", align: "centre" });
      for (const text of sentences) para(flow, twice(text, t, other), { align: "centre", indent: 8 });
      pen.rule(flow.left, top, flow.right, top);
      pen.rule(flow.left, flow.y, flow.right, flow.y);
    }
    return done(pen, t);
  },
};

const twice = (text: string, t: Telling, other: Readonly<Record<string, readonly [number, string]>>): string => {
  let out = text;
  for (const said of [...t.lift.shared.values(), ...t.lift.models[0]!.own.values()]) {
    if (typeof said === "string" || !other[said.unit]) continue;
    const [factor, unit] = other[said.unit]!;
    const printed = writeAmount(said, t.style);
    const n = said.n * factor;
    const second = `${printed} (${n < 40 && unit !== "mm" ? n.toFixed(1) : Math.round(n)} ${unit})`;
    const at = out.indexOf(printed);
    const sound =
      at >= 0 &&
      !/[\d./-]/.test(out[at - 1] ?? "") &&
      !(out[at - 1] === " " && /\d/.test(out[at - 2] ?? "")) &&
      !out.slice(at + printed.length).startsWith(" (");
    if (sound && !/ x |per f/.test(out.slice(Math.max(0, at - 4), at + printed.length + 6)))
      out = out.slice(0, at) + second + out.slice(at + printed.length);
  }
  return out;
};

/** A form: two labels and two values in each row. */
const pairedGrid: Family = {
  name: "grid of label and value, two pairs a row",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [steady, brisk, translated], stylesOf(system));
    const pen = new Pen({ size: system === "si" ? A4 : LETTER });
    const flow = startFlow(pen, { left: 50, right: 50, top: 70, bottom: 70 }, "Data sheet", (p) => `Sheet ${p}`);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 15, font: "bold" });
    const entries = [
      ...sharedEntries(t),
      ...ownEntries(t).map(({ field, label }) => ({ field, label, said: ownSaid(t, t.lift.models[0]!.name, field) })),
    ].map(({ field, label, said }) => {
      keep(t, field, said);
      return [label, print(t, field, said)] as const;
    });
    const w = (flow.right - flow.left) / 2;
    const edges = [flow.left, flow.left + w * 0.58, flow.left + w, flow.left + w * 1.58, flow.right];
    for (let i = 0; i < entries.length; i += 2) row(flow, [...entries[i]!, ...(entries[i + 1] ?? ["", ""])], edges);
    flow.y += 14;
    for (const text of t.voice.noise) para(flow, text, { size: 9 });
    return done(pen, t);
  },
};

/** A drawing with letters, a key to the letters, and the key turned along the page's edge. */
const lettered: Family = {
  name: "lettered drawing with a turned key",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [brisk, translated], stylesOf(system));
    const pen = new Pen({ size: A4 });
    const flow = startFlow(
      pen,
      { left: 60, right: 60, top: 80, bottom: 80 },
      `${t.lift.name} ${t.lift.models[0]!.name}`,
      (p) => `${p}`,
    );
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    for (const text of t.voice.noise.slice(0, 5)) para(flow, text);
    pen.sheet();
    const { paper } = pen;
    pen.rule(200, 150, 200, 650);
    pen.rule(420, 150, 420, 650);
    for (const [i, letter] of [..."ABCDEFG"].entries()) pen.line(letter, 210 + 24 * i, 300 + 40 * i, { font: "bold" });
    paper.save();
    paper.rotate(90, { origin: [0, 0] });
    const own = ownEntries(t);
    own.forEach(({ field, label }, i) => {
      const said = ownSaid(t, t.lift.models[0]!.name, field);
      keep(t, field, said);
      pen.line(`${"ABCDEFGHIJ"[i]}`, 120, -560 + i * 18, { size: 9, font: "bold" });
      pen.line(label, 150, -560 + i * 18, { size: 9 });
      pen.line(print(t, field, said), 400, -560 + i * 18, { size: 9 });
    });
    paper.restore();
    freshPage(flow);
    for (const { heading, sentences } of passagesOf({ ...t, lift: { ...t.lift, models: [] } }, String)) {
      para(flow, heading, { font: "bold", size: 11 });
      for (const [i, text] of sentences.entries())
        para(flow, `${String.fromCharCode(97 + i)}) ${text}`, { indent: 10 });
    }
    return done(pen, t);
  },
};

/** Translators' English, decimal commas, bare numbers under a head that names the unit. */
const commas: Family = {
  name: "translated, decimal commas, unit in the label",
  set: "report",
  systems: ["si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 2, [translated], ["comma"]);
    const pen = new Pen({ size: A4, face: "embedded" });
    const flow = startFlow(pen, { left: 64, right: 64, top: 80, bottom: 80 }, "Operating instruction", (p) => `${p}`);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 15, font: "bold" });
    for (const text of t.voice.noise) para(flow, text);
    for (const { heading, sentences } of passagesOf({ ...t, lift: { ...t.lift, models: [] } }, String)) {
      para(flow, heading, { font: "bold", size: 12 });
      para(flow, sentences.join(" "), { hyphens: "some" });
    }
    freshPage(flow);
    const edges = [flow.left, flow.left + 240, flow.left + 350, flow.right];
    row(flow, ["Technical data", ...t.lift.models.map(({ name }) => name)], edges, { font: "bold", lines: "open" });
    for (const { field, label } of ownEntries(t)) {
      const said = t.lift.models.map(({ name }) => ownSaid(t, name, field));
      t.lift.models.forEach(({ name }, i) => {
        keep(t, field, said[i]!, name);
      });
      const first = said[0]!;
      const unit = typeof first === "string" || first.unit === "" ? "" : ` [${first.unit}]`;
      row(flow, [label + unit, ...said.map((s) => (typeof s === "string" ? s : writeBare(s, "decimal")))], edges, {
        lines: "open",
      });
    }
    return done(pen, t);
  },
};

/** Two pages that disagree about thickness, strength and torque: both are true to the manual. */
const contradicting: Family = {
  name: "two pages that disagree",
  set: "report",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [steady, brisk], stylesOf(system));
    const pen = new Pen({ size: LETTER });
    const flow = startFlow(pen, { left: 72, right: 72, top: 80, bottom: 80 }, t.lift.name, (p) => `${p}`);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 15, font: "bold" });
    for (const text of t.voice.noise) para(flow, text);
    const again = inventLift(seed + 500, system, 1);
    const differing: Telling = {
      ...t,
      lift: { ...again, name: t.lift.name, models: [{ name: t.lift.models[0]!.name, own: again.models[0]!.own }] },
    };
    for (const { heading, sentences } of passagesOf(t, (model) => `Figures of ${model}`)) {
      para(flow, heading, { font: "bold", size: 12 });
      for (const text of sentences) para(flow, text);
    }
    freshPage(flow);
    para(flow, "In brief", { font: "bold", size: 12 });
    const edges = [flow.left, flow.left + 260, flow.right];
    for (const field of ["asks.strength", "anchors.torque", "asks.thickness"] as const) {
      const said = differing.lift.shared.get(field) ?? ownSaid(differing, t.lift.models[0]!.name, field);
      keep(t, field, said);
      row(flow, [t.voice.labels[field]!, print(t, field, said)], edges);
    }
    return done(pen, t);
  },
};

export const reportFamilies: readonly Family[] = [
  marginKeys,
  turnedRows,
  mixedColumns,
  bothUnits,
  pairedGrid,
  lettered,
  commas,
  contradicting,
];
