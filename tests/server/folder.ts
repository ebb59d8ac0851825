import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A throw-away folder with these files in it. */
export const folder = (files: Readonly<Record<string, string>> = {}): string => {
  const path = mkdtempSync(join(tmpdir(), "floorworthy-"));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(path, name), text);
  return path;
};
