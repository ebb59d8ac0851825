import { deflateSync } from "node:zlib";
import { drawLines, readManual, runErrand } from "@floorworthy/manuals/node";
import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";

const bytesOf = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, "latin1"));

/** A file with one content stream and as many pages as wanted, all objects spelled out. */
const rawPdf = (pages: number, content: string, catalog = "", extra: readonly string[] = []): Uint8Array => {
  const kids = Array.from({ length: pages }, (_, i) => `${i + 10} 0 R`).join(" ");
  const objects = [
    `1 0 obj <</Type/Catalog/Pages 2 0 R ${catalog}>> endobj`,
    `2 0 obj <</Type/Pages/Count ${pages}/Kids[${kids}]>> endobj`,
    "3 0 obj <</Type/Font/Subtype/Type1/BaseFont/Helvetica>> endobj",
    `4 0 obj <</Length ${content.length}>> stream\n${content}\nendstream endobj`,
    ...Array.from(
      { length: pages },
      (_, i) =>
        `${i + 10} 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R/Resources<</Font<</F 3 0 R>>/XObject<</I 5 0 R>>>>>> endobj`,
    ),
    ...extra,
  ];
  return bytesOf(`%PDF-1.7\n${objects.join("\n")}\ntrailer <</Root 1 0 R>>\n%%EOF`);
};

const SAYS = "BT /F 10 Tf 72 700 Td (The slab must be at least 5 in. thick.) Tj ET";

const locked = (): Promise<Uint8Array> =>
  new Promise((resolve) => {
    const paper = new PDFDocument({ userPassword: "closed", ownerPassword: "closed too" });
    const chunks: Buffer[] = [];
    paper.on("data", (chunk: Buffer) => chunks.push(chunk));
    paper.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
    paper.text("secret");
    paper.end();
  });

const troubleOf = async (bytes: Uint8Array, options = {}) => {
  const reading = await readManual(bytes, options);
  return reading.ok ? "read" : reading.trouble.code;
};

/** The same without a worker, for files that harm nobody. */
const mildTroubleOf = async (bytes: Uint8Array) => {
  const brought = await runErrand({ kind: "read", bytes, pictures: "as-they-are" });
  return brought.kind === "read" && !brought.reading.ok ? brought.reading.trouble.code : brought.kind;
};

describe("broken and hostile files: one message, in bounded time and memory", () => {
  test("not a PDF, empty, cut short, locked", async () => {
    expect(await mildTroubleOf(bytesOf("GIF89a not a manual"))).toBe("not-a-pdf");
    expect(await mildTroubleOf(new Uint8Array(0))).toBe("not-a-pdf");
    expect(await mildTroubleOf(bytesOf("%PDF-1.7\n1 0 obj <</Type/Cat"))).toBe("broken");
    expect(await mildTroubleOf(await locked())).toBe("encrypted");
  });

  test("two thousand pages", async () => {
    expect(await troubleOf(rawPdf(2000, SAYS))).toBe("too-many-pages");
  });

  test("deep nesting and a page tree that goes round in a circle", async () => {
    const deep = `${"[".repeat(200_000)}${"]".repeat(200_000)}`;
    expect(["broken", "read"]).toContain(await troubleOf(rawPdf(1, SAYS, `/Deep ${deep}`)));
    const circle = bytesOf(
      "%PDF-1.4\n1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj\n2 0 obj <</Type/Pages/Count 9/Kids[2 0 R 2 0 R]>> endobj\ntrailer <</Root 1 0 R>>",
    );
    expect(["broken", "no-text"]).toContain(await troubleOf(circle));
  });

  test("a huge picture is not opened, a script not run: the text is read as if they were not there", async () => {
    const picture =
      "5 0 obj <</Type/XObject/Subtype/Image/Width 60000/Height 60000/BitsPerComponent 8/ColorSpace/DeviceRGB/Length 3>> stream\nabc\nendstream endobj";
    const script = "/OpenAction<</S/JavaScript/JS(app.alert\\('run'\\); while\\(true\\){})>>";
    const bytes = rawPdf(1, `q 600 0 0 700 0 0 cm /I Do Q ${SAYS}`, script, [picture]);
    const reading = await readManual(bytes);
    expect(reading.ok && reading.candidates.map(({ written }) => written)).toEqual(["5 in"]);
    const [image] = await drawLines(bytes, [{ page: 1, box: { x: 60, y: 80, width: 200, height: 20 } }]);
    expect([...image!.slice(1, 4)]).toEqual([..."PNG"].map((c) => c.charCodeAt(0)));
  });

  test("a small file that unpacks to hundreds of megabytes is stopped", async () => {
    const packed = deflateSync(Buffer.alloc(300_000_000, " ")).toString("latin1");
    const bomb = `4 0 obj <</Filter/FlateDecode/Length ${packed.length}>> stream\n${packed}\nendstream endobj`;
    const bytes = rawPdf(1, SAYS, "", [bomb]);
    expect(["too-much-memory", "too-slow"]).toContain(await troubleOf(bytes, { megabytes: 150, seconds: 15 }));
  });

  test("a file that takes too long is stopped", async () => {
    expect(await troubleOf(rawPdf(300, SAYS.repeat(200)), { seconds: 0.2 })).toBe("too-slow");
  });

  test("a page without text says so", async () => {
    expect(await mildTroubleOf(rawPdf(2, "0 0 10 10 re f"))).toBe("no-text");
  });
});
