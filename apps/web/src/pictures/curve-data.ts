/** One row of values over the same base. */
export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [number, number])[];
  readonly pen: "solid" | "dashed" | "dotted";
}

/** A line across the picture that means something: a limit, a day. */
export interface Mark {
  readonly at: number;
  readonly along: "x" | "y";
  readonly words: string;
}
