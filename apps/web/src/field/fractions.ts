export const eighths = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"] as const;

/** Whole inches as typed, with a fraction tapped behind them; tapped again it goes. */
export const withFraction = (typed: string, fraction: string): string => {
  const { whole, part } = partsOf(typed);
  if (part === fraction) return whole;
  return whole === "" ? fraction : `${whole} ${fraction}`;
};

export const fractionOf = (typed: string): string => partsOf(typed).part;

const partsOf = (typed: string): { readonly whole: string; readonly part: string } => {
  const text = typed.replace(/[^\d\s/]/g, " ").trim();
  const part = text.match(/(?:^|\s)(\d+\/\d+)$/)?.[1] ?? "";
  const whole = part === "" ? (text.match(/^\d+/)?.[0] ?? "") : text.slice(0, text.length - part.length).trim();
  return { whole, part };
};
