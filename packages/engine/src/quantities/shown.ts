/** A number as it stands in worked formulas: five significant digits, no thousands mark. */
export const shown = (value: number): string => String(Number(value.toPrecision(5)));
