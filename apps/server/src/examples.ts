import { readdir, readFile } from "node:fs/promises";
import { extname, join, relative } from "node:path";
import { writtenFacts } from "@floorworthy/job/listing";

/** A demo job as the page lists it. */
export interface ExampleEntry {
  readonly id: string;
  readonly title: string;
  /** the file's first comment, if it has one */
  readonly note: string;
}

const isJobFile = (name: string): boolean => [".yaml", ".yml", ".json"].includes(extname(name));
const titleOf = (text: string): string | undefined => writtenFacts(text).find(({ path }) => path === "title")?.written;

/** Job files of a folder by id (the file's name without its ending), in the order of their names. */
const listFiles = async (folder: string): Promise<ReadonlyMap<string, string>> => {
  const names = await readdir(folder).catch(() => []);
  const jobs = names.filter(isJobFile).sort();
  return new Map(jobs.map((name) => [name.slice(0, -extname(name).length), join(folder, name)]));
};

/** The jobs of a folder. A file with mistakes is listed too, so that they can be seen; a lift sheet is not. */
export const listExamples = async (folder: string): Promise<readonly ExampleEntry[]> => {
  const files = [...(await listFiles(folder))];
  const texts = await Promise.all(files.map(async ([id, path]) => ({ id, text: await readFile(path, "utf8") })));
  return texts
    .filter(({ text }) => !isLiftSheet(text))
    .map(({ id, text }) => ({ id, title: titleOf(text) ?? id, note: /^#\s*(.+?)\s*$/m.exec(text)?.[1] ?? "" }));
};

/** The text of a listed job; undefined for any other id. The id is looked up, never made into a path. */
export const readExample = async (folder: string, id: string): Promise<string | undefined> => {
  const path = (await listFiles(folder)).get(id);
  return path === undefined ? undefined : readFile(path, "utf8");
};

/** Lift sheets in files of their own, by their name from the jobs' folder, as a job refers to them. */
export const readLiftSheets = async (folder: string): Promise<Readonly<Record<string, string>>> => {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true }).catch(() => []);
  const paths = entries
    .filter((entry) => entry.isFile() && isJobFile(entry.name))
    .map((e) => join(e.parentPath, e.name));
  const sheets = await Promise.all(
    paths.map(async (path) => [relative(folder, path).replaceAll("\\", "/"), await readFile(path, "utf8")] as const),
  );
  return Object.fromEntries(sheets.filter(([, text]) => isLiftSheet(text)));
};

const isLiftSheet = (text: string): boolean => /^\s*"?lift"?\s*:/m.test(text) && titleOf(text) === undefined;
