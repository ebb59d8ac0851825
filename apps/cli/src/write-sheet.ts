import { mkdir, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import type { Assessment } from "@floorworthy/assess";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { type Drawing, drawingToSvg, type Paper, type Sheet } from "@floorworthy/papers";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { drawingToPdf } from "@floorworthy/papers/pdf";

/** Where a sheet goes: a folder, the job's file, what the sheet is called in file names and in words, the day printed on it. */
export interface SheetFile {
  readonly out: string;
  readonly jobFile: string;
  readonly name: string;
  readonly title: string;
  readonly date: string;
}

/** Where the names of written files are said: beside the answer when that is JSON. */
export const teller = (json: boolean | undefined): ((words: string) => void) => (json ? console.error : console.log);

export const fileStem = ({ out, jobFile, name }: Pick<SheetFile, "out" | "jobFile" | "name">): string =>
  join(out, `${basename(jobFile).replace(/\.[^.]+$/, "")}-${name}`);

const hasPlan = ({ items }: Drawing): boolean => items.some((item) => item.kind === "ground" && item.name === "plan");

/** Writes PDF and SVG, and DXF where there is a plan, and says where; or says why there is no such sheet. */
export const writeSheet = async (
  pages: readonly Drawing[] | Unable,
  file: SheetFile,
  say: (words: string) => void = console.log,
): Promise<"written" | "refused"> => {
  if (isUnable(pages)) {
    console.error(`No ${file.name} sheet: ${pages.reason}`);
    return "refused";
  }
  await mkdir(file.out, { recursive: true });
  const stem = fileStem(file);
  await writeFile(`${stem}.pdf`, await drawingToPdf(pages, { title: file.title, date: file.date }));
  say(`${stem}.pdf`);
  for (const [i, page] of pages.entries()) {
    const svg = `${stem}${i > 0 ? `-${i + 1}` : ""}.svg`;
    await writeFile(svg, drawingToSvg(page));
    say(svg);
  }
  const planned = pages.find(hasPlan);
  if (planned) {
    await writeFile(`${stem}.dxf`, drawingToDxf(planned, "plan"));
    say(`${stem}.dxf`);
  }
  return "written";
};

/** Draws and writes some of a job's sheets, each with its reason where this job may not have it. */
export const writeSheets = async (
  sheets: readonly Sheet[],
  job: Job,
  assessment: Assessment,
  { out, jobFile, date, paper }: Pick<SheetFile, "out" | "jobFile" | "date"> & { readonly paper: Paper },
  say: (words: string) => void = console.log,
): Promise<"some" | "none"> => {
  const results = [];
  for (const { name, title, draw } of sheets) {
    const pages = draw(job, assessment, { date, paper });
    results.push(await writeSheet(pages, { out, jobFile, name, title: `${title}: ${job.title}`, date }, say));
  }
  return results.includes("written") ? "some" : "none";
};
