import type { Block } from "@floorworthy/manuals";
import { describe, expect, test } from "vitest";
import { freshPage, row, startFlow } from "./corpus/flow.ts";
import { laidOut } from "./corpus/index.ts";
import { LETTER, Pen } from "./corpus/pen.ts";

const drawn = async (draw: (pen: Pen) => void, face?: "embedded") => {
  const pen = new Pen({ size: LETTER, ...(face && { face }) });
  draw(pen);
  return laidOut(await pen.bytes());
};

const texts = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((b) =>
    b.kind === "table" ? b.rows.map(({ cells }) => cells.map(({ text }) => text).join(" | ")) : [b.text],
  );

const prose = (n: number, word: string) =>
  Array.from(
    { length: n },
    (_, i) => `${word} sentence number ${i} runs on for a while so that its lines are full.`,
  ).join(" ");

describe("reading order", () => {
  test("two columns are read one after the other, under a title across both", async () => {
    const [page] = await drawn((pen) => {
      pen.sheet();
      pen.line("A title that goes across the whole of the page and both of its columns of text", 72, 72, { size: 12 });
      pen.set(prose(5, "Left"), 72, 110, 210);
      pen.set(prose(5, "Right"), 310, 110, 210);
    });
    const all = texts(page!.blocks).join(" ");
    expect(all.indexOf("Right")).toBeGreaterThan(all.lastIndexOf("Left"));
    expect(all.startsWith("A title")).toBe(true);
  });

  test("words broken at the line's end are whole again, ligatures are letters", async () => {
    const [page] = await drawn((pen) => {
      pen.sheet();
      pen.line("The ﬁrst requirement is for rein-", 72, 100);
      pen.line("forced concrete of sufﬁcient depth under ft-", 72, 112.5);
      pen.line("lbs of torque", 72, 125);
    }, "embedded");
    expect(texts(page!.blocks)).toEqual([
      "The first requirement is for reinforced concrete of sufficient depth under ft-lbs of torque",
    ]);
  });

  test("a turned table, cells that wrap, and boxes on the page as it is shown", async () => {
    const [page] = await drawn((pen) => {
      pen.sheet();
      pen.paper.save();
      pen.paper.rotate(90, { origin: [0, 0] });
      const flow = {
        ...startFlow(pen, { left: 60, right: 60, top: 60, bottom: 60 }, ""),
        y: -500,
        bottom: 9999,
        page: 1,
      };
      row(flow, ["Thickness of the concrete under each of the columns", "160 mm"], [100, 240, 340]);
      row(flow, ["Torque", "110 N·m"], [100, 240, 340]);
      pen.paper.restore();
    });
    expect(texts(page!.blocks)).toEqual([
      "Thickness of the concrete under each of the columns | 160 mm",
      "Torque | 110 N·m",
    ]);
    const block = page!.blocks[0]!;
    const { box } = (block.kind === "table" ? block.rows[0]!.cells[0]! : block).lines[0]!;
    expect(box.height).toBeGreaterThan(box.width);
    expect(box.x).toBeGreaterThan(440);
    expect(box.x + box.width).toBeLessThan(505);
  });

  test("page numbers and running heads are taken off and the number is kept", async () => {
    const pages = await drawn((pen) => {
      const flow = startFlow(
        pen,
        { left: 72, right: 72, top: 90, bottom: 90 },
        "Invented manual 12",
        (n) => `Page ${n + 4} of 9`,
      );
      for (let i = 0; i < 3; i++) {
        freshPage(flow);
        pen.line(`Body of sheet ${i}`, 72, 200);
      }
    });
    expect(pages.map(({ printed }) => printed)).toEqual(["5", "6", "7"]);
    expect(pages.flatMap(({ blocks }) => texts(blocks))).toEqual([
      "Body of sheet 0",
      "Body of sheet 1",
      "Body of sheet 2",
    ]);
  });

  test("a fraction set small is not run into its whole number", async () => {
    const [page] = await drawn((pen) => {
      pen.sheet();
      pen.line("Slab thickness: 4", 72, 100, { size: 12 });
      pen.line("1/2", 72 + pen.width("Slab thickness: 4", { size: 12 }) + 0.5, 100, { size: 7 });
      pen.line("in. minimum", 72 + pen.width("Slab thickness: 4", { size: 12 }) + 16, 100, { size: 12 });
    });
    expect(texts(page!.blocks)).toEqual(["Slab thickness: 4 1/2 in. minimum"]);
  });
});
