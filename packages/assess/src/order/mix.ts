import { fromBase, printNumber } from "@floorworthy/engine/quantities";
import type { Job, Quantity } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { shown } from "../facts/print.ts";
import { tape } from "../joint-plan/index.ts";
import type { MixLine } from "./order.ts";

const practice = "common practice, no source";
const PSI = 0.006894757293168361;

/** Strength to order, MPa: the most anybody asks; 4,000 psi where nobody does. */
export const strengthToOrder = (job: Job): { readonly value: number; readonly basis: string } => {
  const asked: readonly (readonly [Quantity, string])[] = [
    [job.pour?.strength ?? { known: false }, "the job's pour"],
    [job.floor.state === "to-be-poured" ? job.floor.strength.specified : { known: false }, "the floor's specification"],
    [job.lift.asks.strength, "the lift maker's page"],
  ];
  const known = asked.flatMap(([fact, who]) =>
    fact.known ? [{ value: fact.value, basis: `${who}: ${basisWords(fact.basis)}` }] : [],
  );
  const pour = known.find(({ basis }) => basis.startsWith("the job's pour"));
  const most = known.toSorted((a, b) => b.value - a.value)[0];
  const usual = { value: 4000 * PSI, basis: practice };
  if (!most) return usual;
  // where nobody has named the mix, the trade's usual one is not undercut
  const specified = job.floor.state === "to-be-poured" && job.floor.strength.specified.known;
  return pour || specified || most.value >= usual.value ? most : usual;
};

const exposed = ({ setting }: Job): boolean => setting.weather.known && setting.weather.value !== "indoors";

const airWords = (job: Job): readonly [string, string] => {
  const air = job.pour?.air;
  if (air?.known)
    return [air.value > 0 ? `${printNumber(100 * air.value, 1)} % entrained` : "none entrained", basisWords(air.basis)];
  return exposed(job)
    ? ["5 to 7 %, and then no hard trowelling", practice]
    : ["none entrained (indoors, hard trowelled)", practice];
};

/** The mix on the ticket, line by line. */
export const mixFor = (job: Job, steel: "steel" | "none"): readonly MixLine[] => {
  const { pour, units } = job;
  const strength = strengthToOrder(job);
  const [air, airBasis] = airWords(job);
  const line = (id: string, what: string, words: string, basis: string): MixLine => ({ id, what, words, basis });
  const fibre = pour?.fibre;
  const dosage = units === "si" ? ("kg/m³" as const) : ("lb/yd³" as const);
  return [
    line(
      "strength",
      "Cylinder strength at 28 days",
      `at least ${shown(strength.value, "stress", units)}`,
      strength.basis,
    ),
    line("water", "Water to cement", `at most ${exposed(job) ? "0.45" : "0.50"}`, practice),
    pour?.slump.known
      ? line("slump", "Slump when placed", tape(pour.slump.value, units), basisWords(pour.slump.basis))
      : line("slump", "Slump when placed", tape(units === "si" ? 100 : 101.6, units), practice),
    line("air", "Air", air, airBasis),
    line("stone", "Largest stone", units === "si" ? "20 mm" : "3/4 in", practice),
    pour?.cement.known
      ? line("cement", "Cement", `type ${pour.cement.value}`, basisWords(pour.cement.basis))
      : line("cement", "Cement", "type I, I/II or IL as the plant has it", practice),
    line(
      "admixture",
      "Admixtures",
      `water reducer for the slump${steel === "steel" ? "; nothing with chloride, there is steel" : ""}`,
      practice,
    ),
    fibre?.known && fibre.value > 0
      ? line("fibre", "Fibres", `${printNumber(fromBase(fibre.value, dosage), 1)} ${dosage}`, basisWords(fibre.basis))
      : line("fibre", "Fibres", "none", "the job names none"),
    line("cylinders", "Cylinders to cast", "3 for the laboratory, 1 to lie beside the slab", practice),
  ];
};
