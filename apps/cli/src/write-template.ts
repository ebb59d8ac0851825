import { mkdir, writeFile } from "node:fs/promises";
import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { drawingToSvg, type Paper } from "@floorworthy/papers";
import { templateDrawing, templatePages } from "@floorworthy/papers/base-template";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { drawingToPdf } from "@floorworthy/papers/pdf";
import { fileStem } from "./write-sheet.ts";

interface TemplateFiles {
  readonly out: string;
  readonly jobFile: string;
  readonly paper: Paper;
  readonly date: string;
}

/** The base plates at full size: DXF in mm, SVG on one sheet, PDF on pages of the given paper. Returns the files' paths. */
export const writeTemplates = async (
  job: Job,
  { layout }: Assessment,
  { out, jobFile, paper, date }: TemplateFiles,
): Promise<string[]> => {
  await mkdir(out, { recursive: true });
  const files: string[] = [];
  for (const base of layout.bases) {
    const stem = fileStem({ out, jobFile, name: `template-${base.side}` });
    const drawing = templateDrawing(job, base);
    await writeFile(`${stem}.dxf`, drawingToDxf(drawing, "template"));
    await writeFile(`${stem}.svg`, drawingToSvg(drawing));
    await writeFile(`${stem}.pdf`, await drawingToPdf(templatePages(job, base, paper), { title: drawing.title, date }));
    files.push(`${stem}.dxf`, `${stem}.svg`, `${stem}.pdf`);
  }
  return files;
};
