/** A number with three or four significant digits and no exponent. */
export const number = (value: number): string => {
  if (!Number.isFinite(value)) return "no limit";
  const digits = Math.abs(value) >= 1000 ? 0 : Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2;
  return value.toLocaleString("en-US", { maximumFractionDigits: digits });
};

const WIDTH = 100;

/** Words wrapped to the terminal; following lines stand under the first word. */
export const wrap = (text: string, bullet = ""): string[] => {
  const lines: string[] = [];
  let line = bullet;
  for (const word of text.split(" ")) {
    if (line.length + word.length + 1 > WIDTH && line.trim() !== bullet.trim()) {
      lines.push(line.trimEnd());
      line = " ".repeat(bullet.length);
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
};

const CELL = 44;

/** Columns that line up; a long cell is wrapped within its column. */
export const table = (rows: readonly (readonly string[])[]): string[] => {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, c) =>
    Math.min(CELL, Math.max(...rows.map((row) => (row[c] ?? "").length))),
  );
  return rows.flatMap((row) => {
    const cells = widths.map((width, c) => cellLines(row[c] ?? "", width));
    const height = Math.max(...cells.map((cell) => cell.length));
    return Array.from({ length: height }, (_, i) =>
      `  ${cells.map((cell, c) => (cell[i] ?? "").padEnd(widths[c]!)).join("  ")}`.trimEnd(),
    );
  });
};

const cellLines = (text: string, width: number): string[] => {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line && line.length + word.length + 1 > width) {
      lines.push(line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, line];
};

/** A heading and its lines; nothing where there are none. */
export const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];
