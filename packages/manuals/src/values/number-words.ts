const small: readonly string[] = "zero one two three four five six seven eight nine ten eleven twelve".split(" ");

const spoken: ReadonlyMap<string, number> = new Map([
  ...small.map((word, n): [string, number] => [word, n]),
  ["fourteen", 14],
  ["twenty-one", 21],
  ["twenty-eight", 28],
  ["twenty eight", 28],
  ["thirty", 30],
  ["ninety", 90],
]);

/** Number words a manual writes out, longest first, for use in a pattern. */
export const numberWords = [...spoken.keys()].sort((a, b) => b.length - a.length).join("|");

export const spokenNumber = (word: string): number | undefined => spoken.get(word.toLowerCase());
