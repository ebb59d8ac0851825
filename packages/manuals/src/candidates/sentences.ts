/** A stop that ends no sentence, because its word is short for another. */
const SHORT = /(?:^|[\s(])(?:no|fig|approx|min|max|dia|diam|incl|ca|sq|ft|vs|e\.g|i\.e|art|ref|qty)\.$/i;

/** Where sentences begin and what they say. */
export const sentencesOf = (text: string): readonly { readonly from: number; readonly text: string }[] => {
  const parts: { from: number; text: string }[] = [];
  let from = 0;
  for (const { index, 0: stop } of text.matchAll(/[.;!?:]["”’)]?\s+(?=["“(]?[\p{Lu}•*])|\s+(?=[•▪■●]\s)/gu)) {
    const end = index + stop.length;
    const said = text.slice(from, end);
    if (SHORT.test(said.trimEnd()) || /^\s*(?:\d{1,2}|[a-z])\.\s*$/i.test(said)) continue;
    if (/:\s*$/.test(said) && said.length < 60) continue;
    parts.push({ from, text: said.trimEnd() });
    from = end;
  }
  if (text.slice(from).trim() !== "") parts.push({ from, text: text.slice(from) });
  return parts;
};
