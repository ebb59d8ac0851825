import type { Term } from "@floorworthy/engine/quantities";

/** A term on one line: "volume of both pads 1.85 yd³". Three significant figures. */
export const printTerm = ({ words, value, unit }: Term): string =>
  Number.isFinite(value) ? `${words} ${Number(value.toPrecision(3))} ${unit}` : `${words} not known`;
