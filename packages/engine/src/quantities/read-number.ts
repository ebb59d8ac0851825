/** A number at the start of a text, as the trade writes it, and what follows it. */
export type NumberReading =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly problem: "not-a-number" | "ambiguous-number" | "bad-fraction" };

const MIXED = /^([1-9]\d{0,2}(?:,\d{3})+|\d+)(?:\s+|-)(\d+)\/(\d+)/;
const FRACTION = /^(\d+)\/(\d+)/;
const DECIMAL =
  /^(?:[1-9]\d{0,2}(?:([ ,])\d{3})(?:\1\d{3})*(?!\d)(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d{1,3}(?!\d))?/i;
const VULGAR: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** Primes, dashes, fraction signs and odd spaces as their plain forms. */
export const plainSigns = (text: string): string =>
  text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${VULGAR[sign]}`)
    .normalize("NFKC")
    .replace(/[′‘’]/g, "'")
    .replace(/[“”]|''/g, '"')
    .replace(/⁄/g, "/")
    .replace(/[−–—‐‑]/g, "-")
    .replace(/\s+/g, " ")
    .trim();

const fraction = (whole: string, over: string, under: string, rest: string): NumberReading => {
  const [n, d] = [Number(over), Number(under)];
  if (d === 0 || (whole !== "" && n >= d)) return { ok: false, problem: "bad-fraction" };
  return { ok: true, value: Number(whole.replace(/,/g, "")) + n / d, rest };
};

/**
 * Reads 4 · 4.5 · .5 · 4 1/2 · 4-1/2 · 3/8 · 9,000 · 9 000 · 1.2e7 without a sign. A decimal comma, or points and commas
 * that could be read two ways, are refused, not guessed.
 */
export const readNumber = (text: string): NumberReading => {
  const mixed = MIXED.exec(text);
  if (mixed) return fraction(mixed[1]!, mixed[2]!, mixed[3]!, text.slice(mixed[0].length));
  const plain = FRACTION.exec(text);
  if (plain) return fraction("", plain[1]!, plain[2]!, text.slice(plain[0].length));
  const decimal = DECIMAL.exec(text);
  if (!decimal) return { ok: false, problem: "not-a-number" };
  const rest = text.slice(decimal[0].length);
  if (/^ ?[.,]\d/.test(rest)) return { ok: false, problem: "ambiguous-number" };
  if (/^ ?\d/.test(rest)) return { ok: false, problem: "not-a-number" };
  return { ok: true, value: Number(decimal[0].replace(/[ ,]/g, "")), rest };
};
