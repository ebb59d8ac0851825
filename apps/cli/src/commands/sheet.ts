import { mkdir, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { contractorSheet, drawingToSvg } from "@floorworthy/papers";
import { drawingToPdf } from "@floorworthy/papers/pdf";
import { readJobFile } from "../read-job-file.ts";

interface SheetOptions {
  readonly out: string;
  readonly paper: string;
  readonly date?: string;
}

export const sheet = async (path: string, { out, paper, date }: SheetOptions): Promise<number> => {
  if (paper !== "letter" && paper !== "a4") {
    console.error(`--paper ${paper}: write letter or a4.`);
    return 2;
  }
  const job = await readJobFile(path);
  if (!job) return 2;
  const printed = date ?? new Date().toISOString().slice(0, 10);
  const pages = contractorSheet(job, assess(job), { date: printed, paper });
  if (isUnable(pages)) {
    console.error(`No sheet: ${pages.reason}`);
    return 3;
  }
  await mkdir(out, { recursive: true });
  const name = join(out, `${basename(path).replace(/\.[^.]+$/, "")}-contractor`);
  await writeFile(
    `${name}.pdf`,
    await drawingToPdf(pages, { title: `Contractor's sheet: ${job.title}`, date: printed }),
  );
  await writeFile(`${name}.svg`, drawingToSvg(pages[0]!));
  console.log(`${name}.pdf\n${name}.svg`);
  return 0;
};
