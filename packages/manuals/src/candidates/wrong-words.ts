import type { FoundValue } from "../values/index.ts";
import type { Remark } from "./candidate.ts";
import type { FieldName } from "./field-names.ts";

const remark = (code: Remark["code"], message: string, hint: string): Remark => ({ code, message, hint });

/** Words that are wrong where they stand, and what was probably meant. */
export const remarksOn = (field: FieldName, value: FoundValue, text: string): readonly Remark[] => {
  const remarks: Remark[] = [];
  if (field === "asks.strength" && /tensile/i.test(text) && !/compress/i.test(text))
    remarks.push(
      remark(
        "tensile-for-compressive",
        "The manual says tensile strength; a figure of this size is the compressive strength of concrete, which in tension has about a tenth of it.",
        "Take it as compressive strength, or ask the maker.",
      ),
    );
  if (field === "asks.strength" && /\bcubes?\b/i.test(text))
    remarks.push(
      remark(
        "cube-strength",
        "The figure is a cube strength; the lift sheet holds cylinder strength, about four fifths of it.",
        "Ask the maker for the cylinder strength, or keep the higher figure.",
      ),
    );
  if ((field === "asks.strength" || field === "asks.thickness") && /\bcement\b/i.test(text) && !/concrete/i.test(text))
    remarks.push(
      remark(
        "cement-for-concrete",
        "The manual says cement; cement is an ingredient, and concrete is meant.",
        "Take it as concrete.",
      ),
    );
  if (field === "asks.thickness" && /\bfootings?\b/i.test(text) && !/slab|concrete floor|\bpads?\b/i.test(text))
    remarks.push(
      remark(
        "footing-for-pad",
        "The manual says footing; a footing carries a building, and the slab or a pad under the lift is meant.",
        "Take it as the thickness of the concrete under the columns, or ask the maker.",
      ),
    );
  if (field === "anchors.torque" && value.unit === "lb-in")
    remarks.push(
      remark(
        "inch-pounds-of-torque",
        "The torque is printed in inch-pounds, a twelfth of foot-pounds; for these anchors foot-pounds are usual.",
        "Ask the maker which is meant before a wrench is set.",
      ),
    );
  if (value.how.includes("units-disagree"))
    remarks.push(
      remark(
        "units-disagree",
        "The figure and the one in brackets after it differ by more than rounding.",
        "Ask the maker which of the two holds.",
      ),
    );
  return remarks;
};
