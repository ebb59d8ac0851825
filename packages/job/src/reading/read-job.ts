import { distance } from "@floorworthy/engine/geometry";
import { printQuantity } from "@floorworthy/engine/quantities";
import type { YAMLMap } from "yaml";
import { entriesOf } from "../fields/entries.ts";
import type { Fields } from "../fields/field.ts";
import { readFields } from "../fields/group.ts";
import { type JobFile, jobFields, liftSheetFields } from "../form/index.ts";
import type { Issue } from "../issues/issue.ts";
import type { Job } from "../job.ts";
import type { Lift } from "../lift.ts";
import { checkDays } from "./check-days.ts";
import { checkInstallation } from "./check-installation.ts";
import { parseSource } from "./parse-source.ts";
import { at, type Desk, type Place, warn } from "./place.ts";

export interface ReadOptions {
  /** the file's name; its issues carry it */
  readonly name?: string;
  /** fetches the text of a file the job refers to; undefined when it cannot be had */
  readonly load?: (name: string) => string | undefined;
}

export type JobReading =
  | { readonly ok: true; readonly job: Job; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

export type LiftReading =
  | { readonly ok: true; readonly lift: Lift; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

const MOST = 200;

/** In the order of the file, never more than a person can read. */
const inOrder = (issues: readonly Issue[]): readonly Issue[] => {
  const sorted = [...issues].sort(
    (a, b) => (a.file ?? "").localeCompare(b.file ?? "") || a.line - b.line || a.column - b.column,
  );
  if (sorted.length <= MOST) return sorted;
  const last = sorted[MOST - 1]!;
  const message = `There are ${sorted.length - MOST} more mistakes.`;
  return [
    ...sorted.slice(0, MOST),
    { ...last, code: "and-more", path: "", got: "", message, hint: "Correct these first." },
  ];
};

const readWith = <T>(
  fields: Fields<T>,
  what: string,
  text: string,
  desk: Desk,
  name: string | undefined,
): { readonly file: T; readonly root: YAMLMap; readonly place: Place } | undefined => {
  const source = parseSource(text, desk, name, "job");
  const entries = source && entriesOf(source.root, source.place, Object.keys(fields), what);
  if (!source || !entries) return undefined;
  const versionMissing = desk.issues.some(({ code }) => code === "missing-version");
  const known = versionMissing
    ? { ...fields, floorworthy: { ...(fields as Fields<JobFile>).floorworthy, need: "optional" } }
    : fields;
  return { file: readFields(known as Fields<T>, entries, source.place), root: source.root, place: source.place };
};

const deskFor = (options: ReadOptions): Desk => ({ issues: [], warnings: [], load: options.load, outline: undefined });

const jobOf = (file: JobFile): Job => {
  const { floorworthy, columns, ...rest } = file;
  return { ...rest, format: floorworthy, position: columns };
};

const TOLERANCE = 12.7; // half an inch: more than a tape is off by

const warnOfSpacing = (job: Job, root: YAMLMap, place: Place): void => {
  const { position, lift } = job;
  if (!position || !lift.spacing.known) return;
  const apart = distance(position.left, position.right);
  if (Math.abs(apart - lift.spacing.value) <= TOLERANCE) return;
  const found = printQuantity(apart, "length", { system: job.units });
  const node = root.get("columns", true) as never;
  warn(at(place, "columns"), node, "spacing-differs", {
    got: found,
    message: `The columns stand ${found} apart; the lift's sheet says ${lift.spacing.written}.`,
    hint: "Correct one of them.",
  });
};

/**
 * Reads a job file, YAML or JSON. Pure: other files come through `load`.
 *
 * @returns the job in base units with its warnings, or every mistake in the file at once
 */
export const readJob = (text: string, options: ReadOptions = {}): JobReading => {
  const desk = deskFor(options);
  const read = readWith(jobFields, "a job", text, desk, options.name);
  if (read) checkDays(read.file, read.root, read.place);
  if (read) checkInstallation(read.file, read.root, read.place);
  if (!read || desk.issues.length > 0) return { ok: false, issues: inOrder(desk.issues) };
  const job = jobOf(read.file);
  warnOfSpacing(job, read.root, read.place);
  return { ok: true, job, warnings: inOrder(desk.warnings) };
};

/** Reads a lift sheet on its own: `floorworthy: 1` and `lift:`. */
export const readLift = (text: string, options: ReadOptions = {}): LiftReading => {
  const desk = deskFor(options);
  const read = readWith(liftSheetFields, "a lift sheet", text, desk, options.name);
  return read && desk.issues.length === 0
    ? { ok: true, lift: read.file.lift, warnings: inOrder(desk.warnings) }
    : { ok: false, issues: inOrder(desk.issues) };
};
