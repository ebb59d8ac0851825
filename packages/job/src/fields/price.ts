import { readQuantity } from "@floorworthy/engine/quantities";
import type { Node } from "yaml";
import { type Quantity, unknown } from "../fact.ts";
import { type Place, report } from "../reading/place.ts";
import type { Field, PricedBy } from "./field.ts";
import { priceExample } from "./price-words.ts";
import { readFact } from "./quantity.ts";
import { scalarText } from "./scalar-text.ts";

const AMOUNT = /^[^\p{L}\p{N}.,-]{0,2} ?((?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?)(?: ?(?:[A-Z]{3}|\p{Sc}))?(.*)$/u;

/** An amount of money by the measure it is asked for, in the job's own currency per base unit: `185 per yd³`, `7.50 each`. */
export const price = (by: PricedBy, doc: string): Field<Quantity> => ({
  shape: { kind: "price", by },
  doc,
  need: "optional",
  absent: () => unknown,
  read: readFact((node, place) => readPrice(node, place, by), priceExample[by]),
});

const readPrice = (node: Node, place: Place, by: PricedBy): { value: number; written: string } | undefined => {
  const such = `Write an amount and what it is for, such as ${priceExample[by]}.`;
  const text = scalarText(node, place, "a price", such)?.trim();
  if (text === undefined) return undefined;
  const got = text.slice(0, 60);
  const wrong = (code: Parameters<typeof report>[2], message: string): undefined => {
    report(place, node, code, { got, message, hint: such });
    return undefined;
  };
  if (/^\D{0,2}-/.test(text)) return wrong("negative", `"${got}" is negative.`);
  const parts = AMOUNT.exec(text);
  if (!parts) return wrong("not-a-price", `"${got}" is not a price.`);
  const amount = Number(parts[1]!.replaceAll(",", ""));
  const rest = parts[2]!.trim();
  const per = rest.replace(/^(?:per\b|\/|an?\b) ?/, "");
  if (by === "each")
    return rest === "" || /^(?:each|apiece|piece)$/.test(per)
      ? { value: amount, written: text }
      : wrong("not-a-price", `"${got}" is priced by "${per}"; a price for each was expected.`);
  if (rest === "") return wrong("not-a-price", `"${got}" does not say what the price is for.`);
  const unit = readQuantity(/^[\d.]/.test(per) ? per : `1 ${per}`, by);
  if (!unit.ok) return wrong("not-a-price", `"${got}": "${per.slice(0, 30)}" does not measure what is priced here.`);
  return { value: amount / unit.value, written: text };
};
