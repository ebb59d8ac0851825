import { readdir, readFile } from "node:fs/promises";
import { join, relative } from "node:path";

/** Lift sheets in files of their own (`lift:` without a job's `title:`), by their name from the jobs' folder. */
export const readLiftSheets = async (folder: string): Promise<Readonly<Record<string, string>>> => {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true }).catch(() => []);
  const paths = entries
    .filter((entry) => entry.isFile() && /\.(ya?ml|json)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
  const texts = await Promise.all(
    paths.map(async (path) => [relative(folder, path).replaceAll("\\", "/"), await readFile(path, "utf8")] as const),
  );
  return Object.fromEntries(
    texts.filter(([, text]) => /^\s*"?lift"?\s*:/m.test(text) && !/^"?title"?\s*:/m.test(text)),
  );
};
