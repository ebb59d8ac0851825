/** From the volume in the forms to the volume on the ticket. Volumes mm³. */
import { fromBase, type Term, type Unit } from "../quantities/index.ts";

/** How concrete is sold and what is lost. */
export interface OrderTerms {
  /** share of the net volume, 0.07 for 7 %: forms that spread, uneven grade, what stays in the drum */
  readonly waste: number;
  /** smallest step the plant sells, mm³ (1/4 yd³ usually) */
  readonly step: number;
  /** volume of one load, mm³ */
  readonly load: number;
  /** unit the ticket speaks */
  readonly unit: Extract<Unit, "yd³" | "m³" | "ft³">;
}

export interface ConcreteOrder {
  readonly net: Term;
  /** net × (1 + waste) */
  readonly withWaste: Term;
  /** rounded up to what is sold */
  readonly ordered: Term;
  readonly loads: Term;
}

export const concreteOrder = (net: number, { waste, step, load, unit }: OrderTerms): ConcreteOrder => {
  const volume = (symbol: string, words: string, value: number): Term => ({
    symbol,
    words,
    value: fromBase(value, unit),
    unit,
  });
  const gross = net * (1 + waste);
  // a volume that is a whole number of steps but for rounding is not pushed to the next
  const ordered = step > 0 ? Math.ceil(gross / step - 1e-9) * step : gross;
  const netTerm = volume("V", "concrete in the forms", net);
  const grossTerm: Term = {
    ...volume("V(1 + w)", "with waste", gross),
    formula: "V (1 + waste)",
    worked: `${round(fromBase(net, unit))} × ${round(1 + waste)}`,
    from: [
      netTerm,
      { symbol: "w", words: "waste", value: 100 * waste, unit: "%", clause: "common practice, no source" },
    ],
  };
  const orderedTerm: Term = {
    ...volume("Vo", "to order", ordered),
    formula: "rounded up to the step sold",
    from: [grossTerm],
  };
  return {
    net: netTerm,
    withWaste: grossTerm,
    ordered: orderedTerm,
    loads: {
      symbol: "n",
      words: "truck loads",
      value: load > 0 ? Math.ceil(ordered / load - 1e-9) : 0,
      unit: "",
      from: [orderedTerm],
    },
  };
};

/** What rounding up adds, as a share of the net volume. */
export const excessShare = (net: number, ordered: number): number => (ordered - net) / net;

const round = (v: number): string => String(Number(v.toPrecision(5)));
