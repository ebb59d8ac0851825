import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { basename, dirname, relative, resolve } from "node:path";
import { type Job, readJob } from "@floorworthy/job";

/** A file in the job's own folder or below it; undefined when there is none. */
const besideIt = (folder: string, name: string): string | undefined => {
  const file = resolve(folder, name);
  if (relative(folder, file).startsWith("..")) return undefined;
  try {
    return readFileSync(file, "utf8");
  } catch {
    return undefined;
  }
};

/** The job, or undefined after the mistakes have been printed. */
export const readJobFile = async (path: string): Promise<Job | undefined> => {
  let text: string;
  try {
    text = await readFile(path, "utf8");
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why =
      code === "ENOENT"
        ? "there is no such file"
        : code === "EISDIR"
          ? "it is a folder, not a file"
          : "it cannot be read";
    console.error(`${path}: ${why}.`);
    return undefined;
  }
  const load = (name: string): string | undefined => besideIt(dirname(path), name);
  const read = readJob(text, { name: basename(path), load });
  if (read.ok) {
    for (const warning of read.warnings) console.error(`${path}: ${warning.message}`);
    return read.job;
  }
  const count = read.issues.length;
  console.error(`${path}: ${count} mistake${count === 1 ? "" : "s"}.`);
  for (const { line, column, path: where, message, hint } of read.issues) {
    console.error(
      `  ${line === undefined ? "" : `line ${line}${column === undefined ? "" : `:${column}`}  `}${where}  ${message}${hint ? ` ${hint}` : ""}`,
    );
  }
  return undefined;
};
