const NOUN = /\b(post|foot|column|frame|end)\b/;

/** How a base is called in a sentence: "left base", "left front post". */
export const baseWords = (side: string): string => (NOUN.test(side) ? side : `${side} base`);
