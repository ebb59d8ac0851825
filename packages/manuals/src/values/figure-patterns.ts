import { unitPatterns } from "./unit-patterns.ts";

export const SIGN = "[¼½¾⅛⅜⅝⅞⅓⅔]";

export const NUMBER = `(?:\\d+ ?${SIGN}|\\d+(?: |[-–] ?)\\d{1,2} ?[/⁄] ?\\d{1,2}(?!\\d)|\\d{1,2} ?[/⁄] ?\\d{1,2}(?![\\d/])|${SIGN}|\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d{1,3}(?: \\d{3})+(?![\\d/⁄,.])|\\d+[.,]\\d+|\\.\\d+|\\d+)`;

export const UNIT = unitPatterns.map(({ pattern }, i) => `(?<u${i}>${pattern})`).join("|");

export const ANY_UNIT = unitPatterns.map(({ pattern }) => pattern).join("|");

export const START = "(?<![\\p{L}\\d.,/⁄])(?<![\\p{L}\\d]-)";

export const GAP = "[ ]?-? ?";
