/** Levenshtein distance with neighbouring letters swapped counted once (optimal string alignment). */
const editDistance = (a: string, b: string): number => {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      row[j] = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) row[j] = Math.min(row[j]!, rows[i - 2]![j - 2]! + 1);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
};

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]/g, "");

/** One word holds the other: RatedLoad and rated. */
const holds = (a: string, b: string): boolean => Math.min(a.length, b.length) >= 4 && (a.includes(b) || b.includes(a));

/** The word of the list a person probably meant; undefined when none is near. */
export const didYouMean = (word: string, words: readonly string[]): string | undefined => {
  const wanted = plain(word.slice(0, 40));
  const ranked = words
    .map((candidate) => ({ candidate, distance: editDistance(wanted, plain(candidate)) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  if (best && best.distance <= Math.floor((wanted.length + 1) / 4)) return best.candidate;
  return ranked.find(({ candidate }) => holds(wanted, plain(candidate)))?.candidate;
};
