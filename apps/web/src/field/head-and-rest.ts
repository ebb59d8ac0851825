/** The longest beginning that is only the name of something: "L2: ". */
const NAME = 12;

/** What is said, and behind its colon why: "L2 slips." and "0.094 in of movement over 5 rounds …". */
export const headAndRest = (words: string): { readonly head: string; readonly rest: string } => {
  const first = words.indexOf(": ");
  const cut = first >= 0 && first < NAME ? words.indexOf(": ", first + 2) : first;
  if (cut < 0) return { head: words, rest: "" };
  return { head: `${words.slice(0, cut)}.`, rest: words.slice(cut + 2) };
};
