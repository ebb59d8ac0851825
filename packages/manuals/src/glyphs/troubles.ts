import type { Trouble } from "./glyph-run.ts";

/** Most pages a manual may have; ninety is long. */
export const MOST_PAGES = 400;
/** Largest file, bytes. */
export const MOST_BYTES = 150_000_000;

const smaller = "Save the pages that speak of the floor as a smaller file and read that.";

export const troubles = {
  "not-a-pdf": {
    code: "not-a-pdf",
    message: "This is not a PDF file.",
    hint: "Give the manual as the maker published it, as PDF.",
  },
  encrypted: {
    code: "encrypted",
    message: "The file is locked with a password.",
    hint: "Ask whoever sent it for a copy that opens without one.",
  },
  broken: {
    code: "broken",
    message: "The file is damaged or cut short and cannot be read.",
    hint: "Fetch it again from where it came.",
  },
  "too-large": { code: "too-large", message: "The file is larger than 150 MB.", hint: smaller },
  "too-many-pages": {
    code: "too-many-pages",
    message: `The file has more than ${MOST_PAGES} pages; a lift's manual has fewer.`,
    hint: smaller,
  },
  "too-slow": { code: "too-slow", message: "Reading the file took too long and was stopped.", hint: smaller },
  "too-much-memory": {
    code: "too-much-memory",
    message: "Reading the file needed too much memory and was stopped.",
    hint: smaller,
  },
  "no-text": {
    code: "no-text",
    message: "The pages are pictures without text.",
    hint: "Have them recognised (--ocr) and compare every value with its picture.",
  },
} as const satisfies Record<Trouble["code"], Trouble>;
