import { mkdir, readFile, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import {
  type Candidate,
  inWords,
  type LiftSheet,
  liftSheet,
  type ManualReading,
  type Proposal,
} from "@floorworthy/manuals";
import { drawLines, readManual, serveErrand, type WorkerProgram } from "@floorworthy/manuals/node";
import type { Command } from "commander";
import type { ExitCode } from "../on-job.ts";

interface ReadWishes {
  readonly model?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly ocr?: boolean;
}

const IN_WORKER = "reading-room";

/** The built program is its own worker; from source the package knows where its worker is. */
const program: { readonly program?: WorkerProgram } = import.meta.url.endsWith(".ts")
  ? {}
  : { program: { file: new URL(import.meta.url), argv: [IN_WORKER] } };

export const readCommand = (floorworthy: Command): void => {
  floorworthy
    .command("read")
    .argument("<manual>", "the maker's manual, PDF")
    .description("the maker's floor page out of the manual: each value with its page and the line as printed")
    .option("--model <name>", "the model, where the manual speaks of several")
    .option("--out <dir>", "folder for the lift sheet and the pictures of its lines")
    .option("--ocr", "recognise pages that are pictures; their values are never sure")
    .option("--json", "print everything as JSON")
    .action(async (path: string, wishes: ReadWishes) => {
      process.exitCode = await read(path, wishes);
    });
  floorworthy.command(IN_WORKER, { hidden: true }).action(serveErrand);
};

type Read = Extract<ManualReading, { ok: true }>;

const read = async (path: string, wishes: ReadWishes): Promise<ExitCode> => {
  const bytes = await readFile(path).catch(() => undefined);
  if (!bytes) return refuse(`${path} could not be read.`, "Check the name.");
  const reading = await readManual(bytes, { ...program, pictures: wishes.ocr ? "recognised" : "as-they-are" });
  if (!reading.ok) return refuse(`${path}: ${reading.trouble.message}`, reading.trouble.hint);
  const { models, candidates } = reading;
  const model = wishes.model ?? (models.length === 1 ? models[0] : undefined);
  if (wishes.model !== undefined && models.length > 0 && !models.includes(wishes.model))
    return refuse(`${path} does not speak of a model ${wishes.model}.`, `It speaks of: ${models.join(", ")}.`);
  if (model === undefined && models.length > 1)
    return refuse(`${path} speaks of several models: ${models.join(", ")}.`, "Say which one with --model.");
  const sheet = liftSheet(candidates, model, { document: basename(path) });
  const lines = wishes.json
    ? [JSON.stringify({ ...reading, model, sheet: sheet.text, asked: sheet.asked, doubts: sheet.doubts }, null, 2)]
    : textOf(basename(path), reading, model, sheet);
  console.log(lines.join("\n"));
  if (wishes.out !== undefined) console.error(`\n${await keep(wishes.out, path, model, bytes, sheet)}`);
  return sheet.proposals.length > 0 ? 0 : 3;
};

const refuse = (message: string, hint: string): ExitCode => {
  console.error(`${message} ${hint}`);
  return 2;
};

const groups: readonly (readonly [string, RegExp])[] = [
  ["The lift", /^(?:top|arms|rated|columnWeight|weight|spacing|columnsInside|tieHeight|overall|base|power)/],
  ["The anchors", /^anchors/],
  ["What the floor must be", /^asks/],
  ["Loads the maker states", /^reactions/],
];

const textOf = (
  name: string,
  { pages, unread }: Read,
  model: string | undefined,
  sheet: LiftSheet,
): readonly string[] => {
  const pictures = pages.filter(({ source }) => source === "picture").map(({ number }) => number);
  const section = (title: string, body: readonly string[]) => (body.length > 0 ? ["", title, ...body] : []);
  return [
    `${name}: ${pages.length} page${pages.length === 1 ? "" : "s"}${model === undefined ? "" : `, model ${model}`}`,
    "A proposal. Compare each value with its page before it is used.",
    ...(pictures.length > 0 ? [`Pages without text, not read: ${pictures.join(", ")}. Try --ocr.`] : []),
    ...(unread.length > 0 ? [`Damaged pages, not read: ${unread.join(", ")}.`] : []),
    ...groups.flatMap(([title, pattern]) =>
      section(title, sheet.proposals.filter(({ field }) => pattern.test(field)).flatMap(proposalLines)),
    ),
    ...section(
      "To be looked at",
      sheet.doubts.map((doubt) => `  ${doubt}`),
    ),
    ...section(
      "Still to be asked",
      sheet.asked.map(({ question }) => `  ${question}`),
    ),
  ];
};

const proposalLines = ({ field, taken, all }: Proposal): readonly string[] => [
  `  ${(taken ? taken.written : "open").padEnd(16)} ${inWords(field)}`,
  ...all.map((candidate) => `      ${candidate === taken ? "·" : "?"} ${evidenceOf(candidate, taken)}`),
];

const evidenceOf = (candidate: Candidate, taken: Candidate | undefined): string => {
  const { page, printed, line } = candidate.evidence;
  const place =
    printed === undefined || printed === String(page) ? `page ${page}` : `page ${page} (printed ${printed})`;
  const value = candidate === taken ? "" : `${candidate.written}, `;
  return `${value}${place}, ${candidate.confidence}: “${line.slice(0, 140)}”`;
};

const keep = async (
  folder: string,
  path: string,
  model: string | undefined,
  bytes: Uint8Array,
  sheet: LiftSheet,
): Promise<string> => {
  await mkdir(folder, { recursive: true });
  const safe = (text: string) => text.replace(/[^\p{L}\d.-]+/gu, "-").toLowerCase();
  const stem = safe(basename(path).replace(/\.pdf$/i, "") + (model === undefined ? "" : `-${model}`));
  const shown = sheet.proposals.flatMap(({ all }) => all);
  const images = await drawLines(
    bytes,
    shown.map(({ evidence: { page, box } }) => ({ page, box })),
    program,
  );
  const files: readonly (readonly [string, Uint8Array | string | undefined])[] = [
    [`${stem}.yaml`, sheet.text],
    ...shown.map(({ id, evidence }, i) => [`${stem}-page-${evidence.page}-${safe(id)}.png`, images[i]] as const),
  ];
  for (const [name, content] of files) if (content !== undefined) await writeFile(join(folder, name), content);
  return `${join(folder, `${stem}.yaml`)}\nand beside it ${images.filter(Boolean).length} pictures of its lines`;
};
