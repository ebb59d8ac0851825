import { type Lettering, widthOfText } from "./text-width.ts";

const cut = (word: string, size: number, lettering: Lettering, width: number): string[] => {
  const parts: string[] = [];
  let part = "";
  for (const letter of word) {
    if (part !== "" && widthOfText(part + letter, size, lettering) > width) {
      parts.push(part);
      part = letter;
    } else part += letter;
  }
  return [...parts, part];
};

/** A number stays with its fraction and with its unit. */
const HARD = "\u00a0";
const glued = (words: string): string =>
  words
    .replace(/(\d) (?=\d+\/\d)/g, `$1${HARD}`)
    .replace(/(\d) (?=(?:in|ft|mm|m|psi|MPa|lb-ft|N·m|cu|sq|m³|m²|%|days|°F|°C)(?!\w))/g, `$1${HARD}`)
    .replace(/(cu|sq) (?=yd|ft)/g, `$1${HARD}`);

/** Lines no wider than `width`, broken at spaces; a single word that is too long is cut. */
export const wrapText = (words: string, size: number, lettering: Lettering, width: number): readonly string[] => {
  const lines: string[] = [];
  let line = "";
  for (const word of glued(words)
    .split(/[ \t\n]+/)
    .flatMap((w) => (w === "" ? [] : [w.replaceAll(HARD, " ")]))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (widthOfText(longer, size, lettering) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const parts = cut(word, size, lettering, width);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? "";
  }
  return line === "" ? lines : [...lines, line];
};
