const ligatures: Readonly<Record<string, string>> = {
  ﬀ: "ff",
  ﬁ: "fi",
  ﬂ: "fl",
  ﬃ: "ffi",
  ﬄ: "ffl",
  ﬅ: "st",
  ﬆ: "st",
};

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const LOWERED = "₀₁₂₃₄₅₆₇₈₉";
const figures = (text: string): string =>
  [...text].map((sign) => Math.max(RAISED.indexOf(sign), LOWERED.indexOf(sign))).join("");

/** Ligatures as letters, odd spaces as spaces, soft hyphens gone; 4¹⁄₂ as 4 1/2, never as 41/2. */
export const plainLetters = (text: string): string =>
  text
    .replace(/[ﬀ-ﬆ]/g, (sign) => ligatures[sign] ?? sign)
    .replace(/([⁰¹²³⁴-⁹]+)[⁄/]([₀-₉]+)/g, (_, over, under) => ` ${figures(over)}/${figures(under)}`)
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, " ")
    .replace(/[\u00ad\u200b-\u200d\ufeff]|(?!\t)\p{Cc}/gu, "");

/** Half words that keep their hyphen when the line breaks after it. */
const KEEPS = /(?:^|[\s(])(?:re|ft|in|lb|lbs|foot|inch|pound|two|one|four|cross|self|non|post|pre|free|floor)-$/i;

/** Joins a line to the text before it; a word broken by a hyphen becomes whole. */
export const joinLines = (before: string, after: string): string => {
  if (before === "") return after;
  const broken = /\p{L}-$/u.test(before) && /^\p{Ll}/u.test(after);
  if (broken) return (KEEPS.test(before) ? before : before.slice(0, -1)) + after;
  return /[-/]$/.test(before) && /^[\p{L}\d]/u.test(after) && !/\s[-/]$/.test(before)
    ? before + after
    : `${before} ${after}`;
};
