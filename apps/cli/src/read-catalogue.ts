import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { type Lift, readLift } from "@floorworthy/job";

/** Every lift sheet of a folder, in the order of their names; undefined after the mistakes have been printed. */
export const readCatalogue = async (folder: string): Promise<readonly Lift[] | undefined> => {
  let names: string[];
  try {
    names = (await readdir(folder)).filter((name) => /\.ya?ml$/i.test(name)).sort();
  } catch {
    console.error(`${folder}: there is no such folder.`);
    return undefined;
  }
  if (names.length === 0) {
    console.error(`${folder}: no lift sheet (*.yaml) is in it.`);
    return undefined;
  }
  const lifts: Lift[] = [];
  let mistakes = 0;
  for (const name of names) {
    const read = readLift(await readFile(join(folder, name), "utf8"), { name });
    if (read.ok) {
      lifts.push(read.lift);
      continue;
    }
    mistakes += read.issues.length;
    for (const { line, path, message, hint } of read.issues)
      console.error(
        `${join(folder, name)}: ${line === undefined ? "" : `line ${line}  `}${path}  ${message}${hint ? ` ${hint}` : ""}`,
      );
  }
  return mistakes > 0 ? undefined : lifts;
};
