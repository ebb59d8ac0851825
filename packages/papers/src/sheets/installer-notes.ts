import type { SetOut } from "@floorworthy/assess/setout";
import { capital, printNumber, type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { printFeet, printLength, type UnitSystem } from "../print/measure.ts";
import { type Note, note } from "./note.ts";

const length = (term: Term, units: UnitSystem): string => printLength(toBase(term.value, term.unit), units);
const far = (term: Term, units: UnitSystem): string =>
  `${printFeet(toBase(term.value, term.unit), units)}${units === "si" ? " mm" : ""}`;

export const beforeNote = ({ before, drilling }: SetOut): Note =>
  note(drilling === "marks-only" ? "Nothing is drilled before" : "Before the first hole", before, "box");

export const orderNote = ({ order }: SetOut): Note => note("Order of work", order, "box");

export const squareNote = ({ square, spacing, tolerances }: SetOut, { units }: Job): Note =>
  note("Square", [
    spacing && `Column centres ${far(spacing, units)} apart.`,
    ...square.map(
      ({ title, diagonals: [a, b], apart }) =>
        `${title}: ${a.length.words} ${far(a.length, units)}, ${b.length.words} ${far(b.length, units)}${apart > 1 ? "; not a rectangle, so they differ" : ""}.`,
    ),
    ...tolerances.map((t) => `${t.words}: at most ${length(t, units)} (common practice).`).map(capital),
  ]);

export const holeNote = ({ hole }: SetOut, { units }: Job): Note =>
  note("Each hole, from the anchor's sheet", [
    line("Bit", hole.diameter, units, "new carbide, straight"),
    line("Bit marked at", hole.bitMark, units),
    hole.bitMarkThroughPlate &&
      `Through the standing plate mark ${length(hole.bitMarkThroughPlate, units)} and add the shims there.`,
    line("Set to (nominal embedment)", hole.nominal, units),
    hole.effective &&
      `Effective embedment counted ${printLength(toBase(hole.effective.value, hole.effective.unit), units)}.`,
    line("Left below the hole at least", hole.coverBelow, units),
    hole.projection &&
      `Stud above the floor ${length(hole.projection, units)}; shims it reaches through: ${hole.shimRoom ? length(hole.shimRoom, units) : "not known"} at most.`,
    "Two full threads beyond the nut.",
  ]);

const line = (words: string, term: Term | undefined, units: UnitSystem, after = ""): string =>
  `${words}: ${term ? length(term, units) : "not known"}${after ? `, ${after}` : ""}.`;

export const torqueNote = ({ torque }: SetOut, marks: ReadonlyMap<string, string>): Note =>
  note("Torque", [
    torque.rounds.length
      ? `By hand, three rounds: ${torque.rounds.map((t) => printNumber(t.value, 0)).join(", ")} ${torque.full?.unit ?? ""}. Last round by the maker's figure exactly.`
      : "Not known: take it from the anchor's sheet and the lift's manual.",
    ...torque.patterns.map(
      ({ side, order }) => `${capital(side)}: ${order.map((id) => marks.get(id) ?? id).join(", ")}.`,
    ),
    "Torque says how hard a nut turned, not what the anchor holds.",
  ]);

export const stopNote = (): Note =>
  note("Stop and ask", [
    "The bit meets steel, a tube, a void or soft ground, or stops early.",
    "A hole wanders, grows, or is short. A nut spins or runs out of thread.",
    "A crack opens round an anchor, or it sounds hollow.",
    "Never a short anchor, never one left out, never a second hole in the broken concrete.",
  ]);

export const writeDownNote = (): Note =>
  note("Write down as you go", [
    "For each hole: depth, what was met, cleaned twice, stud projection, torque, turn of the nut from snug.",
    "Beam fitted, plumb of both columns both ways, shims by corner; photographs with a tape.",
  ]);

export const shimNote = (words: readonly string[]): Note => note("Plumb and shims", words);
