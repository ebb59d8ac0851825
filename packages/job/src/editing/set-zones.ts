import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { type Document, Document as DocumentOf, isMap, isSeq, parseDocument, type YAMLMap, type YAMLSeq } from "yaml";
import type { Joint, Zone } from "../floor.ts";
import type { Job } from "../job.ts";
import { yamlOptions } from "../reading/parse-source.ts";

/**
 * Writes the proposed zones of a job into its file: proposed pads and strips of before are taken out, joints that end at a
 * cut-out are cut short, and for a floor still to be poured its thickness follows. Everything else stays, comments too.
 * @param text - of the file the job was read from
 * @returns the new text; the old one when the file is no YAML
 */
export const setZones = (text: string, job: Job): string => {
  const document = parseDocument(text, yamlOptions) as unknown as Document;
  if (document.errors.length > 0 || !isMap(document.contents)) return text;
  const floor = groupAt(document, document.contents as YAMLMap, "floor");
  const written = floor.get("zones", true);
  const kept = isSeq(written) ? written.items.filter((item) => !isProposedPad(item)) : [];
  const zones = document.createNode([]) as YAMLSeq;
  const proposed = job.floor.zones.filter(
    (zone) => zone.state === "proposed" && (zone.kind === "pad" || zone.kind === "strip"),
  );
  const fresh = proposed.map((zone) => zoneNode(document, job, zone));
  const inserted = insertedText(text, floor, fresh);
  if (inserted !== undefined && jointsAsWritten(floor, job)) return inserted;
  zones.items.push(...kept, ...fresh);
  if (zones.items.length > 0) floor.set("zones", zones);
  else floor.delete("zones");
  setJoints(document, floor, job);
  const { thickness } = job.floor;
  if (
    job.floor.state === "to-be-poured" &&
    thickness.known &&
    thickness.basis.kind === "assumed" &&
    thickness.basis.why === POURED
  )
    floor.set("thickness", document.createNode({ value: thickness.written, why: thickness.basis.why }));
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
};

const groupAt = (document: Document, map: YAMLMap, key: string): YAMLMap => {
  const inside = map.get(key, true);
  if (isMap(inside)) return inside as YAMLMap;
  const made = document.createNode({}) as YAMLMap;
  map.set(key, made);
  return made;
};

const isProposedPad = (item: unknown): boolean =>
  isMap(item) && item.get("state") === "proposed" && (item.get("kind") === "pad" || item.get("kind") === "strip");

/** The reason a design writes beside its own figures. */
const POURED = "as it would be poured";

/** A length as a person reads it, to a hundredth of an inch or a millimetre's tenth. */
const length = (job: Job, mm: number): string => {
  const unit = job.units === "si" ? "mm" : "in";
  const step = job.units === "si" ? 0.1 : toBase(0.01, "in");
  const rounded = Math.round(mm / step) * step;
  return `${Number(fromBase(rounded, unit).toFixed(2))} ${unit}`;
};

/** Its corners stand on one line each. */
const zoneNode = (document: Document, job: Job, zone: Zone): YAMLMap => {
  const node = document.createNode(zoneWords(job, zone)) as YAMLMap;
  const outline = node.get("outline", true);
  if (isSeq(outline)) for (const corner of outline.items) if (isSeq(corner)) corner.flow = true;
  return node;
};

/** Where the file says nothing of zones yet, they are put before the floor's first key and no other character changes. */
const insertedText = (text: string, floor: YAMLMap, fresh: readonly YAMLMap[]): string | undefined => {
  const first = floor.items[0]?.key as { range?: readonly [number, number, number] } | undefined;
  if (floor.flow || !first?.range || floor.has("zones") || fresh.length === 0) return undefined;
  const at = first.range[0];
  const indent = at - (text.lastIndexOf("\n", at - 1) + 1);
  if (!/^ *$/.test(text.slice(at - indent, at))) return undefined;
  const block = new DocumentOf({ zones: fresh }).toString({ lineWidth: 0, flowCollectionPadding: false });
  const lines = block.trimEnd().split("\n");
  return `${text.slice(0, at)}${lines.join(`\n${" ".repeat(indent)}`)}\n${" ".repeat(indent)}${text.slice(at)}`;
};

const zoneWords = (job: Job, zone: Zone): object => ({
  name: zone.name,
  kind: zone.kind,
  state: "proposed",
  outline: zone.outline.map((p) => [length(job, p.x), length(job, p.y)]),
  ...(zone.thickness.known ? { thickness: { value: zone.thickness.written, why: POURED } } : {}),
  sideSlope: zone.sideSlope,
  ...(zone.tied.known ? { tied: zone.tied.value } : {}),
  ...(zone.strength.known ? { strength: { value: zone.strength.written, why: POURED } } : {}),
});

/** Names of joints that a cut-out has shortened or taken away: a shortened one goes on as "…, part 1". */
const jointsChanged = (written: YAMLSeq, job: Job): ReadonlySet<string> =>
  new Set(
    written.items
      .flatMap((item) => (isMap(item) && item.has("name") ? [String(item.get("name"))] : []))
      .filter((name) => !job.floor.joints.some((joint) => joint.name === name)),
  );

const jointsAsWritten = (floor: YAMLMap, job: Job): boolean => {
  const written = floor.get("joints", true);
  return !isSeq(written) || jointsChanged(written as YAMLSeq, job).size === 0;
};

/** Joints are written anew only where one was cut short or taken away. */
const setJoints = (document: Document, floor: YAMLMap, job: Job): void => {
  const written = floor.get("joints", true);
  if (!isSeq(written)) return;
  const changed = jointsChanged(written as YAMLSeq, job);
  if (changed.size === 0) return;
  const items = written.items.filter((item) => !(isMap(item) && changed.has(String(item.get("name")))));
  const fresh = job.floor.joints
    .filter(({ name }) => [...changed].some((before) => name.startsWith(`${before}, part `)))
    .map((joint: Joint) =>
      document.createNode({
        name: joint.name,
        kind: joint.kind,
        from: [length(job, joint.from.x), length(job, joint.from.y)],
        to: [length(job, joint.to.x), length(job, joint.to.y)],
        state: joint.state,
      }),
    );
  (written as YAMLSeq).items = [...items, ...fresh];
};
