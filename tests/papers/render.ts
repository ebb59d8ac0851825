/** `npx tsx tests/papers/render.ts DIR` writes the fixture sheets for the eye. */
import { mkdirSync, writeFileSync } from "node:fs";
import { isUnable } from "@floorworthy/engine/quantities";
import { contractorSheet, drawingToSvg, padSection, planDrawing } from "@floorworthy/papers";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { drawingToPdf } from "@floorworthy/papers/pdf";
import { assessmentOf, newPour, standing, standingAssessment, strip } from "./fixtures.ts";

const dir = process.argv[2] ?? "/tmp/papers";
mkdirSync(dir, { recursive: true });
for (const [name, job, assessment, paper] of [
  ["pour", newPour, assessmentOf(newPour), "letter"],
  ["standing", standing, standingAssessment, "letter"],
  ["strip", strip, assessmentOf(strip), "a4"],
] as const) {
  const sheet = contractorSheet(job, assessment, { date: "2026-05-05", paper });
  if (isUnable(sheet)) throw new Error(sheet.reason);
  writeFileSync(`${dir}/${name}.svg`, drawingToSvg(sheet[0]!));
  writeFileSync(`${dir}/${name}.pdf`, await drawingToPdf(sheet, { title: sheet[0]!.title, date: "2026-05-05" }));
  writeFileSync(`${dir}/${name}.dxf`, drawingToDxf(sheet[0]!, "plan"));
  writeFileSync(`${dir}/${name}-plan.svg`, drawingToSvg(planDrawing(job, assessment)));
  writeFileSync(`${dir}/${name}-section.svg`, drawingToSvg(padSection(job, assessment)));
}

const { readJob } = await import("@floorworthy/job");
const { assess } = await import("@floorworthy/assess");
const { readdirSync, readFileSync } = await import("node:fs");
for (const file of readdirSync("examples").filter((f) => f.endsWith(".yaml"))) {
  const reading = readJob(readFileSync(`examples/${file}`, "utf8"), {
    load: (path) => readFileSync(`examples/${path}`, "utf8"),
  });
  if (!reading.ok) {
    console.log(file, reading.issues.slice(0, 3));
    continue;
  }
  const assessment = assess(reading.job);
  const sheet = contractorSheet(reading.job, assessment, { date: "2026-05-05", paper: "letter" });
  console.log(file, assessment.outcome, isUnable(sheet) ? sheet.reason : "sheet");
  if (isUnable(sheet)) {
    writeFileSync(`${dir}/ex-${file}-plan.svg`, drawingToSvg(planDrawing(reading.job, assessment)));
    continue;
  }
  writeFileSync(`${dir}/ex-${file}.pdf`, await drawingToPdf(sheet, { title: file, date: "2026-05-05" }));
}
