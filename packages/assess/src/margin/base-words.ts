/** How a base is called in a sentence: "left base", "post front-left". */
export const baseWords = (side: string): string => (side === "left" || side === "right" ? `${side} base` : side);
