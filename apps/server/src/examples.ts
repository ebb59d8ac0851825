import { readdir, readFile } from "node:fs/promises";
import { extname, join } from "node:path";

/** A demo job as the page lists it. */
export interface ExampleEntry {
  readonly id: string;
  readonly title: string;
  /** the file's first comment, if it has one */
  readonly note: string;
}

const endings = [".yaml", ".yml", ".json"];

/** Job files of a folder by id (the file's name without its ending), in the order of their names. */
const listFiles = async (folder: string): Promise<ReadonlyMap<string, string>> => {
  const names = await readdir(folder).catch(() => []);
  const jobs = names.filter((name) => endings.includes(extname(name))).sort();
  return new Map(jobs.map((name) => [name.slice(0, -extname(name).length), join(folder, name)]));
};

const isJob = (text: string): boolean => /(?:^|\{)\s*"?title"?\s*:/m.test(text);

export const listExamples = async (folder: string): Promise<readonly ExampleEntry[]> => {
  const files = [...(await listFiles(folder))];
  const texts = await Promise.all(files.map(async ([id, path]) => ({ id, text: await readFile(path, "utf8") })));
  return texts.filter(({ text }) => isJob(text)).map(({ id, text }) => ({ id, ...describe(id, text) }));
};

/** The text of a listed job; undefined for any other id. The id is looked up, never made into a path. */
export const readExample = async (folder: string, id: string): Promise<string | undefined> => {
  const path = (await listFiles(folder)).get(id);
  return path === undefined ? undefined : readFile(path, "utf8");
};

const describe = (id: string, text: string): Omit<ExampleEntry, "id"> => ({
  title: /(?:^|\{)\s*"?title"?\s*:\s*["']?(.+?)["']?,?\s*$/m.exec(text)?.[1] ?? id,
  note: /^#\s*(.+?)\s*$/m.exec(text)?.[1] ?? "",
});
