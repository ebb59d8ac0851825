import type { Assessment } from "@floorworthy/assess";
import { fromBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { jointDistance } from "../plan/keep-clear.ts";
import { printLength, printStress } from "../print/measure.ts";
import { type Note, note } from "./note.ts";

/** The sentence stands at the head of the sheet: reasons that say the same are not printed twice. */
const reasonsBeside = (sentence: string, reasons: readonly string[]): readonly string[] => {
  const others = [...new Set(reasons)].filter((reason) => !sentence.includes(reason));
  return others.length ? others : [sentence];
};

/** Notes for a floor that stays as it is: what was found, what the maker asks, what to do before drilling. */
export const nothingToPourNote = ({ sentence, reasons }: Assessment): Note =>
  note("No concrete is to be poured", reasonsBeside(sentence, reasons));

export const pageNote = ({ page }: Assessment): Note =>
  note(
    "The maker's page, line by line",
    page.lines
      .filter((line) => line.result !== "not-asked")
      .map(
        ({ title, asked, found, result }) =>
          `${title}: asked ${asked}; found ${found}: ${result === "not-shown" ? "not shown" : result}.`,
      ),
  );

export const conditionsNote = ({ conditions }: Assessment): Note => note("Conditions", conditions, "box");

export const foundNote = ({ floor, units }: Job): Note => {
  const { specified, cylinders, cores } = floor.strength;
  return note("The floor as found", [
    floor.thickness.known ? `Named thickness ${printLength(floor.thickness.value, units)}.` : "No thickness is named.",
    ...floor.readings.map(
      ({ near, thickness, method, end }) =>
        `${near ? `${near}: ` : ""}${thickness.known ? printLength(thickness.value, units) : "no figure"} (${method}, ${end.replace("-", " ")})`,
    ),
    specified.known ? `Strength specified ${printStress(specified.value, units)}.` : "Strength: not known from papers.",
    cylinders.length + cores.length ? `${cylinders.length} cylinders and ${cores.length} cores on record.` : undefined,
  ]);
};

export const anchorsNote = ({ lift, units }: Job): Note => {
  const { product, torque } = lift.anchors;
  const length = (q: typeof product.diameter, words: string) =>
    q.known ? `${words} ${printLength(q.value, units)}` : `${words} not known`;
  return note("Anchors", [
    `${length(product.holeDiameter, "Hole")}, ${length(product.holeDepth, "depth")}, ${length(product.nominalEmbedment, "embedment")}.`,
    torque.known
      ? `Torque ${units === "si" ? `${Math.round(fromBase(torque.value, "N·m"))} N·m` : `${Math.round(fromBase(torque.value, "lb-ft"))} lb-ft`}, by hand with a checked wrench, never an impact wrench.`
      : "Torque: not known. Take it from the maker's manual.",
  ]);
};

export const beforeDrillingNote = (job: Job): Note =>
  note(
    "Before drilling",
    [
      "Buried lines, tubes and bars located at every hole.",
      `No joint or crack within ${printLength(jointDistance(job.lift, job.units).distance, job.units)} of an anchor (${jointDistance(job.lift, job.units).by}).`,
      "Columns set out from the two walls shown and the diagonals compared.",
      "Thickness checked at the corners of every base.",
      "Stop and ask if the bit meets steel, a void or a tube.",
    ],
    "box",
  );
