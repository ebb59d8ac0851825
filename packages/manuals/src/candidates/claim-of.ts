import { printInUnit } from "@floorworthy/engine/quantities";
import type { FoundValue } from "../values/index.ts";
import type { Confidence } from "./candidate.ts";
import type { Claim } from "./claim.ts";
import type { FieldName } from "./field-names.ts";
import { type FieldRule, ruleOf } from "./field-rules.ts";
import type { Statement } from "./statement.ts";
import { remarksOn } from "./wrong-words.ts";

export const claimOf = (
  field: FieldName,
  value: FoundValue,
  statement: Statement,
  trusted: Confidence,
  reasons: readonly string[],
): Claim => {
  const remarks = remarksOn(field, value, statement.text);
  const { usual, dimension } = ruleOf(field) ?? { usual: [0, Number.POSITIVE_INFINITY], dimension: value.dimension };
  const odd = value.high < usual[0] || value.low > usual[1];
  const comma = value.how.includes("decimal-comma");
  return {
    field,
    said: value,
    from: value.from,
    to: value.to,
    confidence: odd || remarks.length > 0 ? "doubtful" : comma && trusted === "sure" ? "likely" : trusted,
    reasons: [...reasons, ...(comma ? ["a comma was read as a decimal point"] : [])],
    remarks: [
      ...remarks,
      ...(odd
        ? [
            {
              code: "unusual-value" as const,
              message: `${typeof value.written === "string" ? value.written : value.written.high} is unusual for this.`,
              hint: `Look at the page; usual is ${printInUnit(Number(usual[0].toPrecision(3)), unitOfBase(dimension))} to ${printInUnit(Number(usual[1].toPrecision(3)), unitOfBase(dimension))}.`,
            },
          ]
        : []),
    ],
  };
};

const unitOfBase = (dimension: FieldRule["dimension"]) =>
  dimension === "length"
    ? "mm"
    : dimension === "force"
      ? "N"
      : dimension === "stress"
        ? "MPa"
        : dimension === "moment"
          ? "N·mm"
          : dimension === "time"
            ? "d"
            : "";
