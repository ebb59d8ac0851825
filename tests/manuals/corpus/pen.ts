/** Setting type for invented manuals: own line breaking, so that hyphens and columns fall where a family wants them. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import PDFDocument from "pdfkit";

type Paper = InstanceType<typeof PDFDocument>;

export interface SetOptions {
  readonly size?: number;
  readonly font?: "regular" | "bold";
  /** break long words at line ends */
  readonly hyphens?: "some" | "none";
  readonly align?: "left" | "centre" | "spread";
  readonly leading?: number;
}

const require = createRequire(import.meta.url);
const loaded = new Map<string, Buffer>();
const ttf = (name: string): Buffer => {
  const held = loaded.get(name) ?? readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  loaded.set(name, held);
  return held;
};

/** Signs outside the standard fonts' own code page (WinAnsi). */
const OUTSIDE = /[″⁄≥≤⅛⅜⅝⅞·²]/;

export class Pen {
  readonly paper: Paper;
  private readonly chunks: Buffer[] = [];
  private readonly faces: readonly [string | Buffer, string | Buffer];

  constructor(
    readonly page: {
      readonly size: readonly [number, number];
      readonly face?: "sans" | "serif" | "embedded" | "condensed";
    },
  ) {
    this.paper = new PDFDocument({
      size: [...page.size] as [number, number],
      margin: 0,
      autoFirstPage: false,
      compress: false,
    });
    this.paper.on("data", (chunk: Buffer) => this.chunks.push(chunk));
    this.faces =
      page.face === "embedded"
        ? [ttf("DejaVuSans"), ttf("DejaVuSans-Bold")]
        : page.face === "condensed"
          ? [ttf("DejaVuSerifCondensed"), ttf("DejaVuSerifCondensed-Bold")]
          : page.face === "serif"
            ? ["Times-Roman", "Times-Bold"]
            : ["Helvetica", "Helvetica-Bold"];
  }

  sheet(size: readonly [number, number] = this.page.size): void {
    this.paper.addPage({ size: [...size] as [number, number], margin: 0 });
  }

  private face(text: string, { size = 10, font = "regular" }: SetOptions): void {
    const standard = typeof this.faces[0] === "string";
    const face = font === "bold" ? this.faces[1] : this.faces[0];
    this.paper.font(standard && OUTSIDE.test(text) ? ttf(font === "bold" ? "DejaVuSans-Bold" : "DejaVuSans") : face);
    this.paper.fontSize(size);
  }

  width(text: string, options: SetOptions = {}): number {
    this.face(text, options);
    return this.paper.widthOfString(text);
  }

  /** One line; y is the top of the letters. */
  line(text: string, x: number, y: number, options: SetOptions = {}): void {
    this.face(text, options);
    this.paper.text(text, x, y, { lineBreak: false });
  }

  private lines(text: string, width: number, options: SetOptions): readonly string[] {
    const done: string[] = [];
    let open = "";
    for (const word of text.split(" ")) {
      const tried = open === "" ? word : `${open} ${word}`;
      if (this.width(tried, options) <= width) {
        open = tried;
        continue;
      }
      const cut = options.hyphens === "some" && /^[a-z]{7,}[.,;]?$/.test(word) ? Math.floor(word.length / 2) : 0;
      const first = `${open} ${word.slice(0, cut)}-`;
      if (cut > 0 && open !== "" && this.width(first, options) <= width) {
        done.push(first);
        open = word.slice(cut);
      } else {
        if (open !== "") done.push(open);
        open = word;
      }
    }
    return open === "" ? done : [...done, open];
  }

  /** A paragraph; returns where the next one may start. */
  set(text: string, x: number, y: number, width: number, options: SetOptions = {}): number {
    const { size = 10, leading = 1.25, align = "left" } = options;
    const lines = this.lines(text, width, options);
    lines.forEach((line, i) => {
      const free = width - this.width(line, options);
      if (align === "centre") this.line(line, x + free / 2, y + i * size * leading, options);
      else if (align === "spread" && i < lines.length - 1 && line.includes(" "))
        this.spread(line, x, y + i * size * leading, free, options);
      else this.line(line, x, y + i * size * leading, options);
    });
    return y + lines.length * size * leading;
  }

  private spread(line: string, x: number, y: number, free: number, options: SetOptions): void {
    this.face(line, options);
    this.paper.text(line, x, y, { lineBreak: false, wordSpacing: free / (line.split(" ").length - 1) });
  }

  rule(x1: number, y1: number, x2: number, y2: number): void {
    this.paper.moveTo(x1, y1).lineTo(x2, y2).lineWidth(0.5).stroke();
  }

  async bytes(): Promise<Uint8Array> {
    const ended = new Promise((resolve) => this.paper.on("end", resolve));
    this.paper.end();
    await ended;
    return new Uint8Array(Buffer.concat(this.chunks));
  }
}

export const LETTER = [612, 792] as const;
export const A4 = [595.28, 841.89] as const;
export const LEGAL = [612, 1008] as const;
