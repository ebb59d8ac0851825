import { readNumber } from "./read-number.ts";
import { unitOf } from "./unit-spellings.ts";
import { dimensionOf, toBase } from "./units.ts";

const PER = /^(.+?) ?(?:\bper\b|\/) ?([a-z']+)\.?$/i;
const RATIO = /^(\d+(?:\.\d+)?) ?: ?(\d+(?:\.\d+)?)$/;

/** Rise over run: 1/8 in per ft · 10 mm/m · 1:48. Undefined when the text is not a slope. */
export const readSlope = (text: string): number | undefined => {
  const ratio = RATIO.exec(text);
  if (ratio && Number(ratio[2]) > 0) return Number(ratio[1]) / Number(ratio[2]);
  const per = PER.exec(text);
  const rise = per ? readNumber(per[1]!) : undefined;
  if (!per || !rise?.ok) return undefined;
  const [up, along] = [unitOf(rise.rest), unitOf(per[2]!)];
  if (!up || !along || dimensionOf(up) !== "length" || dimensionOf(along) !== "length") return undefined;
  return toBase(rise.value, up) / toBase(1, along);
};
