/** How long a manual of sixty pages takes, and how much memory: `npx tsx bench/manuals.ts`. */
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

const main = async (): Promise<void> => {
  const bytes = await longManual();
  const rest = process.memoryUsage.rss();
  const loading = performance.now();
  const { pdf } = await pdfForNode();
  console.log(`pdf.js loaded in ${seconds(loading)} s`);
  for (const pass of ["first", "second"]) {
    const cpu = process.cpuUsage();
    const start = performance.now();
    const glyphs = await readGlyphs(pdf, bytes);
    if (!glyphs.ok) throw new Error(glyphs.trouble.message);
    const stage1 = seconds(start);
    const middle = performance.now();
    layOut(glyphs.pages);
    const stage2 = seconds(middle);
    const last = performance.now();
    const reading = readingOf(glyphs);
    const { user, system } = process.cpuUsage(cpu);
    const found = reading.ok ? reading.candidates.length : 0;
    console.log(
      `${pass}: ${glyphs.pages.length} pages, ${bytes.length >> 10} kB; glyphs ${stage1} s, layout ${stage2} s, layout and candidates ${seconds(last)} s; processor ${((user + system) / 1e6).toFixed(2)} s; ${found} candidates`,
    );
  }
  const peak = process.resourceUsage().maxRSS / 1024;
  console.log(`memory: ${(rest >> 20).toFixed(0)} MB before reading, ${peak.toFixed(0)} MB at most`);
};

void main();
