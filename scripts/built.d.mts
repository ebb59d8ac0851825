export const ensureBuilt: (say?: (words: string) => void) => void;
