import { readQuantity } from "@floorworthy/engine/quantities";
import type { FoundValue } from "../values/index.ts";
import type { Claim } from "./claim.ts";
import type { Statement } from "./statement.ts";

const BEFORE = /(?<n>\d{1,2},?\d{3})[ -]?(?:lbs?\.?|pounds?|#)[ -](?:(?:test|strength|mix) )?(?:concrete|cement)/gi;
const AFTER =
  /(?:concrete|cement)[^.;\d]{0,40}?(?:strength|rated|rating|test)[^.;\d]{0,20}(?<n>\d{1,2},?\d{3}) ?(?:lbs?\.?|pounds?|#)(?! ?(?:\/|per))/gi;

/** "3,000 lb concrete": a strength spoken of by the pound. It is shown as psi, never taken as sure. */
export const claimPounds = ({ text, from }: Statement): readonly Claim[] =>
  [...text.matchAll(BEFORE), ...text.matchAll(AFTER)].flatMap((match): readonly Claim[] => {
    const number = match.groups!.n!;
    const read = readQuantity(`${number} psi`, "stress");
    const at = match.index + match[0].indexOf(number);
    const fits = read.ok && Number(number.replace(",", "")) >= 1800 && Number(number.replace(",", "")) <= 9000;
    if (!fits || at < from) return [];
    const { value } = read;
    const said: FoundValue = {
      from: at,
      to: at + number.length,
      dimension: "stress",
      value,
      low: value,
      high: value,
      written: `${number} psi`,
      unit: "psi",
      how: [],
    };
    const hint = "Take it as pounds per square inch, or ask the maker.";
    const message = `The manual speaks of ${number} lb of concrete; a strength in pounds per square inch is meant.`;
    return [
      {
        field: "asks.strength",
        said,
        from: said.from,
        to: said.to,
        confidence: "doubtful",
        reasons: [],
        remarks: [{ code: "pounds-of-concrete", message, hint }],
      },
    ];
  });
