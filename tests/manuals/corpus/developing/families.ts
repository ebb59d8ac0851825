/** Layouts the reader was developed on. */
import { freshPage, para, row, startFlow } from "../flow.ts";
import { type InventedLift, inventLift, type System } from "../invented-lift.ts";
import { A4, LETTER, Pen } from "../pen.ts";
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
import { type Style, writeBare } from "../write-value.ts";
import { developingVoices } from "./voices.ts";

const pickOf = <T>(list: readonly T[], seed: number): T => list[seed % list.length]!;
const { formal, loose, continental } = developingVoices;

const begin = (
  seed: number,
  system: System,
  models: number,
  voices: readonly Voice[],
  styles?: readonly Style[],
): Telling => {
  const usual: readonly Style[] =
    system === "si"
      ? ["plain", "marks", "slash", "spelled"]
      : ["plain", "marks", "vulgar", "decimal", "slash", "spelled"];
  return telling(inventLift(seed, system, models), pickOf(voices, seed), pickOf(styles ?? usual, Math.floor(seed / 2)));
};

const done = async (pen: Pen, t: Telling): Promise<InventedManual> => ({
  bytes: await pen.bytes(),
  truth: t.truth,
  lift: t.lift,
});
const titleOf = (lift: InventedLift): string =>
  `${lift.name} — ${lift.models.length > 1 ? "Models" : "Model"} ${lift.models.map(({ name }) => name).join(" and ")}`;

const plainProse: Family = {
  name: "one column of prose",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1 + (seed % 2), [formal, loose, continental]);
    const pen = new Pen({ size: LETTER });
    const flow = startFlow(pen, { left: 72, right: 72, top: 80, bottom: 80 }, "Installation and Operation Manual");
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 18, font: "bold" });
    for (const text of t.voice.noise) para(flow, text);
    for (const { heading, sentences } of passagesOf(t, (model) => `Model ${model}`)) {
      para(flow, heading, { font: "bold", size: 13 });
      para(flow, sentences.join(" "));
    }
    return done(pen, t);
  },
};

const bullets: Family = {
  name: "bulleted list",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [loose, formal]);
    const pen = new Pen({ size: A4, face: "serif" });
    const flow = startFlow(pen, { left: 60, right: 60, top: 80, bottom: 80 }, "", (p) => `${p}`);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 18, font: "bold" });
    let number = 1;
    for (const text of t.voice.noise) para(flow, `${number++}. ${text}`);
    for (const { heading, sentences } of passagesOf(t, () => "Figures")) {
      para(flow, heading, { font: "bold", size: 13 });
      for (const text of sentences) para(flow, `${number++}. ${text}`, { indent: 14 });
    }
    return done(pen, t);
  },
};

const labelTable: Family = {
  name: "table of label and value",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [formal, loose, continental]);
    const pen = new Pen({ size: LETTER });
    const flow = startFlow(pen, { left: 72, right: 72, top: 80, bottom: 80 }, "Specifications");
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    const edges = [flow.left, flow.left + 230, flow.right];
    for (const { field, label, said } of sharedEntries(t)) {
      keep(t, field, said);
      row(flow, [label, print(t, field, said)], edges);
    }
    for (const { field, label } of ownEntries(t)) {
      const said = ownSaid(t, t.lift.models[0]!.name, field);
      keep(t, field, said);
      row(flow, [label, print(t, field, said)], edges);
    }
    for (const text of t.voice.noise) para(flow, text);
    return done(pen, t);
  },
};

const modelColumns: Family = {
  name: "one column per model",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 3, [formal, continental]);
    const pen = new Pen({ size: A4 });
    const flow = startFlow(pen, { left: 50, right: 50, top: 80, bottom: 80 }, t.lift.name);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    const edges = [flow.left, flow.left + 190, flow.left + 290, flow.left + 390, flow.right];
    row(flow, ["Model", ...t.lift.models.map(({ name }) => name)], edges, { font: "bold" });
    for (const { field, label } of ownEntries(t))
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
    for (const { heading, sentences } of passagesOf({ ...t, lift: { ...t.lift, models: [] } }, String)) {
      para(flow, heading, { font: "bold" });
      para(flow, sentences.join(" "));
    }
    for (const text of t.voice.noise) para(flow, text);
    return done(pen, t);
  },
};

const unitColumn: Family = {
  name: "a column for the unit",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 2, [formal, continental], ["plain", "vulgar"]);
    const pen = new Pen({ size: A4, face: "embedded" });
    const flow = startFlow(pen, { left: 50, right: 50, top: 80, bottom: 80 }, "Technical data");
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    const edges = [flow.left, flow.left + 220, flow.left + 290, flow.left + 390, flow.right];
    row(flow, ["Description", "Unit", ...t.lift.models.map(({ name }) => name)], edges, { font: "bold" });
    for (const { field, label } of ownEntries(t)) {
      const said = t.lift.models.map(({ name }) => ownSaid(t, name, field));
      t.lift.models.forEach(({ name }, i) => {
        keep(t, field, said[i]!, name);
      });
      const first = said[0]!;
      row(
        flow,
        [
          label,
          typeof first === "string" || first.unit === "" ? "-" : first.unit,
          ...said.map((s) => (typeof s === "string" ? s : writeBare(s, t.style))),
        ],
        edges,
      );
    }
    for (const { field, label, said } of sharedEntries(t)) {
      if (typeof said === "string" || said.unit === "" || said.unit === "month") continue;
      keep(t, field, said);
      const bare = writeBare(said, t.style);
      row(flow, [label, said.unit === "d" ? "days" : said.unit, bare, bare], edges);
    }
    return done(pen, t);
  },
};

const twoColumns: Family = {
  name: "two columns of prose",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 1, [formal, loose, continental]);
    const pen = new Pen({ size: LETTER, face: seed % 2 ? "embedded" : "sans" });
    const flow = startFlow(
      pen,
      { left: 50, right: 50, top: 80, bottom: 80 },
      "Owner's Manual",
      (p) => `Page ${p} of 3`,
    );
    const half = (flow.right - flow.left - 24) / 2;
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    let [x, y] = [flow.left, flow.y];
    const start = flow.y;
    const texts = passagesOf(t, () => "Figures").flatMap(({ heading, sentences }) => [heading, ...sentences]);
    for (const text of [...t.voice.noise, ...texts, ...t.voice.noise]) {
      if (y > 420) {
        if (x === flow.left) [x, y] = [flow.left + half + 24, flow.page === 1 ? start : flow.top];
        else {
          freshPage(flow);
          [x, y] = [flow.left, flow.top];
        }
      }
      y = pen.set(text, x, y, half, { hyphens: "some" }) + 6;
    }
    return done(pen, t);
  },
};

const leaders: Family = {
  name: "dot leaders and a starred note",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 2, [formal, loose]);
    const pen = new Pen({ size: LETTER });
    const flow = startFlow(pen, { left: 80, right: 80, top: 80, bottom: 80 }, "", (p) => `${p}`);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    const dotted = (label: string, value: string) => {
      const width = flow.right - flow.left - pen.width(value);
      let text = `${label} `;
      while (pen.width(`${text}.`) < width - 4) text += ".";
      pen.line(text, flow.left, flow.y);
      pen.line(value, flow.right - pen.width(value), flow.y);
      flow.y += 15;
    };
    for (const { field, label, said } of sharedEntries(t)) {
      keep(t, field, said);
      dotted(label, print(t, field, said));
    }
    const [first, second] = t.lift.models.map(({ name }) => name) as [string, string];
    const [thick, more] = [ownSaid(t, first, "asks.thickness"), ownSaid(t, second, "asks.thickness")];
    dotted(`${t.voice.labels["asks.thickness"]}*`, print(t, "asks.thickness", thick));
    keep(t, "asks.thickness", thick, first);
    keep(t, "asks.thickness", more, second);
    flow.y += 8;
    para(flow, `* ${print(t, "asks.thickness", more)} for model ${second}.`, { size: 8 });
    for (const text of t.voice.noise) para(flow, text);
    return done(pen, t);
  },
};

const turnedTable: Family = {
  name: "table turned on its page",
  set: "developing",
  systems: ["inch-pound", "si"],
  build: async (seed, system) => {
    const t = begin(seed, system, 2, [formal, continental]);
    const pen = new Pen({ size: A4 });
    const flow = startFlow(pen, { left: 60, right: 60, top: 80, bottom: 80 }, t.lift.name);
    freshPage(flow);
    para(flow, titleOf(t.lift), { size: 16, font: "bold" });
    for (const text of t.voice.noise) para(flow, text);
    pen.sheet();
    pen.paper.save();
    pen.paper.translate(0, A4[1]);
    pen.paper.rotate(-90);
    const turned = { ...flow, y: 60, bottom: 560 };
    const edges = [60, 320, 460, 600];
    row(turned, ["Specification", ...t.lift.models.map(({ name }) => name)], edges, { font: "bold" });
    for (const { field, label } of ownEntries(t))
      row(
        turned,
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
    pen.paper.restore();
    return done(pen, t);
  },
};

export const developingFamilies: readonly Family[] = [
  plainProse,
  bullets,
  labelTable,
  modelColumns,
  unitColumn,
  twoColumns,
  leaders,
  turnedTable,
];
