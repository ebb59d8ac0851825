/** How long a manual of sixty pages takes, and how much memory. Needs `npm run build`. Run: npx tsx bench/manuals.ts */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { layOut, readGlyphs, readingOf } from "@floorworthy/manuals";
import { pdfForNode } from "@floorworthy/manuals/node";
import { freshPage, para, row, startFlow } from "../tests/manuals/corpus/flow.ts";
import { LETTER, Pen } from "../tests/manuals/corpus/pen.ts";

const PAGES = 60;

/** Sixty full pages: prose of thirty-odd lines and a table of twelve rows on each. */
const longManual = async (): Promise<Uint8Array> => {
  const pen = new Pen({ size: LETTER });
  const flow = startFlow(pen, { left: 72, right: 72, top: 80, bottom: 80 }, "Invented manual");
  for (let page = 0; page < PAGES; page++) {
    freshPage(flow);
    for (let i = 0; i < 16; i++)
      para(
        flow,
        `Step ${i}: raise the carriage ${4 + i} in. and look at the locks; torque the beam bolts to ${50 + i} ft-lb, then lower the lift until the cables hang free of the floor.`,
        { after: 2 },
      );
    if (page === 30)
      para(flow, "The concrete must be at least 5 1/2 in. thick with a compressive strength of 3,500 psi.");
    for (let i = 0; i < 8; i++) row(flow, [`Part ${i}`, `${i + 2} pieces`, `${3 + i} in.`], [72, 250, 400, 540]);
  }
  return pen.bytes();
};

const seconds = (start: number): string => ((performance.now() - start) / 1000).toFixed(2);

const stages = async (bytes: Uint8Array): Promise<void> => {
  const { pdf } = await pdfForNode();
  for (const pass of ["first", "second"]) {
    const cpu = process.cpuUsage();
    const start = performance.now();
    const glyphs = await readGlyphs(pdf, bytes);
    if (!glyphs.ok) throw new Error(glyphs.trouble.message);
    const first = seconds(start);
    const middle = performance.now();
    layOut(glyphs.pages);
    const second = seconds(middle);
    const last = performance.now();
    readingOf(glyphs);
    const { user, system } = process.cpuUsage(cpu);
    console.log(
      `${pass}: ${glyphs.pages.length} pages, ${bytes.length >> 10} kB; glyphs ${first} s, layout ${second} s, layout and candidates ${seconds(last)} s; processor ${((user + system) / 1e6).toFixed(2)} s`,
    );
  }
};

const SAY_MEMORY = "process.on('exit',()=>console.error('most memory '+(process.resourceUsage().maxRSS>>10)+' MB'))";

/** The command as people use it, its worker bounded in memory. */
const command = (bytes: Uint8Array): void => {
  const folder = mkdtempSync(join(tmpdir(), "floorworthy-manual-"));
  const file = join(folder, "sixty-pages.pdf");
  writeFileSync(file, bytes);
  const start = performance.now();
  const args = ["--import", `data:text/javascript,${SAY_MEMORY}`, "bin/floorworthy.mjs", "read", file];
  const { stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  console.log(`floorworthy read: ${seconds(start)} s from start to end, ${stderr.trim().split("\n").at(-1)}`);
  rmSync(folder, { recursive: true });
};

const manual = await longManual();
command(manual);
await stages(manual);
