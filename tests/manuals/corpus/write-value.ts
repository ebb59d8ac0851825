/** The ways a figure is printed. A style is one way for every dimension; manuals keep to one or two. */
import { dimensionOf } from "@floorworthy/engine/quantities";
import type { Amount } from "./invented-lift.ts";

export type Style = "plain" | "marks" | "vulgar" | "decimal" | "slash" | "spelled" | "comma";

const parts = [2, 4, 8, 16];
const vulgar: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

const fractionOf = (n: number): readonly [number, string] => {
  const whole = Math.floor(n + 1e-9);
  const rest = n - whole;
  const under = parts.find((p) => Math.abs(rest * p - Math.round(rest * p)) < 1e-9);
  if (rest < 1e-9 || under === undefined) return [whole, ""];
  return [whole, `${Math.round(rest * under)}/${under}`];
};

const inches = (n: number, style: Style): string => {
  const [whole, over] = fractionOf(n);
  const lead = whole > 0 ? String(whole) : "";
  const both = (gap: string, fraction: string) => (lead && fraction ? lead + gap + fraction : lead + fraction);
  if (style === "decimal") return `${Math.round(n * 1000) / 1000} in`;
  if (style === "marks") return `${both("-", over)}"`;
  if (style === "vulgar") return `${both("", vulgar[over] ?? over)} in.`;
  if (style === "slash") return `${both(" ", over.replace("/", "⁄"))}″`;
  if (style === "spelled") return `${both(" ", over)} inches`;
  return `${both(" ", over)} in.`;
};

const thousands = (n: number, gap: string): string => String(n).replace(/\B(?=(\d{3})+$)/g, gap);

const millimetres = (n: number, style: Style): string => {
  if (style === "decimal" && n >= 1000) return `${n / 1000} m`;
  if (style === "comma") return n >= 1000 ? `${String(n / 1000).replace(".", ",")} m` : `${n} mm`;
  if (style === "spelled") return `${n} millimetres`;
  return `${n >= 1000 && style === "plain" ? thousands(n, ",") : n} mm`;
};

const ways: Readonly<Record<string, Partial<Record<Style, (n: number) => string>> & { plain: (n: number) => string }>> =
  {
    lb: {
      plain: (n) => `${thousands(n, ",")} lb`,
      marks: (n) => `${thousands(n, ",")} lbs.`,
      spelled: (n) => `${thousands(n, ",")} pounds`,
      decimal: (n) => `${n} lbs`,
    },
    kg: {
      plain: (n) => `${n} kg`,
      slash: (n) => `${thousands(n, " ")} kg`,
      decimal: (n) => (n >= 1000 ? `${n / 1000} t` : `${n} kg`),
      comma: (n) => (n >= 1000 && n % 1000 ? `${String(n / 1000).replace(".", ",")} t` : `${n} kg`),
      spelled: (n) => `${n} kilograms`,
    },
    psi: {
      plain: (n) => `${thousands(n, ",")} psi`,
      marks: (n) => `${n} PSI`,
      decimal: (n) => `${n / 1000} ksi`,
      slash: (n) => `${thousands(n, ",")} lb/in²`,
      spelled: (n) => `${thousands(n, ",")} pounds per square inch`,
    },
    MPa: {
      plain: (n) => `${n} MPa`,
      marks: (n) => `${n} N/mm²`,
      slash: (n) => `C${n}/${n === 30 ? 37 : n + 5}`,
      comma: (n) => `${n} N/mm2`,
    },
    "lb-ft": {
      plain: (n) => `${n} lb-ft`,
      marks: (n) => `${n} ft-lbs`,
      vulgar: (n) => `${n} ft. lbs.`,
      spelled: (n) => `${n} foot-pounds`,
      slash: (n) => `${n} ft·lb`,
    },
    N·m: { plain: (n) => `${n} N·m`, marks: (n) => `${n} Nm`, comma: (n) => `${n} N.m`, slash: (n) => `${n} N-m` },
    d: { plain: (n) => `${n} days`, spelled: (n) => (n === 28 ? "twenty-eight (28) days" : `${n} days`) },
    month: { plain: (n) => `${n} months`, spelled: (n) => (n === 3 ? "three months" : "six months") },
  };

export const writeAmount = ({ n, unit }: Amount, style: Style): string => {
  if (unit === "in") return inches(n, style);
  if (unit === "mm") return millimetres(n, style);
  const way = ways[unit];
  if (!way) throw new Error(`no way to write ${dimensionOf(unit)}`);
  return (way[style] ?? way.plain)(n);
};

/** The bare number, for tables whose unit stands in the label or in a column of its own. */
export const writeBare = ({ n, unit }: Amount, style: Style): string =>
  unit === "in"
    ? inches(n, style).replace(/ ?(?:in\.?|inches|["″])$/, "")
    : n >= 1000 && style !== "decimal"
      ? thousands(n, ",")
      : String(n);

/** Rise over run in the manual's own system. */
export const writeSlope = (rise: number, system: "inch-pound" | "si", style: Style): string => {
  if (system === "si")
    return style === "marks"
      ? `${Math.round(rise * 1000)} mm/m`
      : style === "slash"
        ? `${Math.round(rise * 1000) / 10} %`
        : `${Math.round(rise * 1000)} mm per metre`;
  const eighths = inches(rise * 12, style === "decimal" ? "plain" : style);
  return style === "marks" ? `${eighths} per ft` : `${eighths} per foot`;
};
