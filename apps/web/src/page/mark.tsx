import type { PageLine } from "@floorworthy/assess";

type Result = PageLine["result"] | "over";

const words: Readonly<Record<Result, string>> = {
  meets: "meets",
  fails: "fails",
  "not-shown": "not shown",
  "not-asked": "not asked",
  over: "too much",
};

const shapes: Readonly<Record<Result, string>> = {
  meets: "M2 6.5 5 9.5 10.5 2.5",
  fails: "M2.5 2.5l7 7M9.5 2.5l-7 7",
  over: "M2.5 2.5l7 7M9.5 2.5l-7 7",
  "not-shown": "M6 1.8a4.2 4.2 0 1 1 0 8.4 4.2 4.2 0 0 1 0-8.4",
  "not-asked": "M2.5 6h7",
};

/** A result in a word and a drawn mark; never by colour. */
export const Mark = ({ result }: { result: Result }) => (
  <span className="mark" data-result={result}>
    <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
      <path d={shapes[result]} />
    </svg>
    {words[result]}
  </span>
);
