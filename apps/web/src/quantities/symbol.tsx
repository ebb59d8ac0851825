/** A symbol as printed in its source, what follows an underscore set low: `t_min`, `f_r/σ`. */
export const MathSymbol = ({ written }: { written: string }) => (
  <var>
    {lowered(written).map(({ text, set }, i) =>
      // biome-ignore lint/suspicious/noArrayIndexKey: the letters of a symbol never change places
      set === "low" ? <sub key={i}>{text}</sub> : text,
    )}
  </var>
);

/** A symbol in pieces, each on the line or set low. */
export const lowered = (written: string): readonly { readonly text: string; readonly set: "low" | "level" }[] =>
  written
    .split(/(_[\p{L}\p{N},']+)/u)
    .filter((piece) => piece !== "")
    .map((piece) =>
      piece.startsWith("_") ? { text: piece.slice(1), set: "low" as const } : { text: piece, set: "level" as const },
    );
