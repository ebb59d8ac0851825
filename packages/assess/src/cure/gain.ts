import type { Gain } from "@floorworthy/engine/concrete";
import type { Job } from "@floorworthy/job";

/** The curve a cement hardens by, and another one printed beside it. */
export interface GainChoice {
  readonly gain: Gain;
  readonly words: string;
  readonly clause: string;
  readonly formula: string;
  readonly beside: { readonly gain: Gain; readonly words: string };
}

const aci = (cement: "type-I" | "type-III", words: string, beside: GainChoice["beside"]): GainChoice => ({
  gain: { rule: "aci-209", cement, cure: "moist" },
  words,
  clause: "ACI 209R-92 Eq. 2-1, Table 2.2.1",
  formula: cement === "type-I" ? "t/(4 + 0.85 t)" : "t/(2.3 + 0.92 t)",
  beside,
});

const en = (cement: "N" | "R" | "S"): GainChoice["beside"] => ({
  gain: { rule: "en-1992", cement },
  words: `EN 1992-1-1 3.1.2, class ${cement}`,
});

const slow = (words: string): GainChoice => ({
  gain: en("S").gain,
  words,
  clause: "EN 1992-1-1:2004 3.1.2 (6), class S",
  formula: "exp{0.38 [1 − √(28/t)]}",
  beside: {
    gain: { rule: "aci-209", cement: "type-I", cure: "moist" },
    words: "ACI 209R-92, type I moist",
  },
});

/** Constants by cement. ACI 209 prints types I and III; the slower ones are counted by the slow class of EN 1992-1-1. */
export const gainFor = ({ pour }: Job): GainChoice => {
  const cement = pour?.cement.known ? pour.cement.value : undefined;
  switch (cement) {
    case "III":
      return aci("type-III", "type III cement, kept moist", en("R"));
    case "II":
      return slow("type II cement, counted as a slow one");
    case "blended":
      return slow("cement with fly ash or slag, counted as a slow one; with more than a quarter of it, slower still");
    case "I":
      return aci("type-I", "type I cement, kept moist", en("N"));
    default:
      return aci("type-I", "cement not said, counted as type I, kept moist", en("N"));
  }
};
