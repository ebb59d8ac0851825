import { type Unit, units } from "./units.ts";

/**
 * The ways people write a unit, all lower case. A middle dot stands for a dot, hyphen, star or space between two
 * words, so "N m", "N·m" and "N-m" are one spelling. Every unit's printed name is a spelling too.
 */
const spelled: Partial<Record<Unit, string>> = {
  mm: "millimeter millimeters millimetre millimetres",
  cm: "centimeter centimeters centimetre centimetres",
  m: "meter meters metre metres",
  in: '" inch inches',
  ft: "' foot feet",
  yd: "yds yard yards",
  "mm²": "sq·mm",
  "m²": "sq·m",
  "in²": "sq·in square·inch square·inches",
  "ft²": "sq·ft sf square·foot square·feet",
  "m³": "cu·m cubic·meter cubic·meters cubic·metre cubic·metres",
  "in³": "cu·in",
  "ft³": "cu·ft cf cubic·foot cubic·feet",
  "yd³": "cu·yd cy cubic·yard cubic·yards",
  N: "newton newtons",
  kg: "kgs kgf kilogram kilograms",
  t: "tonne tonnes",
  lb: "lbs lbf # pound pounds",
  kip: "kips klb",
  N·mm: "nmm",
  N·m: "nm",
  kN·m: "knm",
  "kip-in": "in·kip in·kips kips·in",
  "kip-ft": "ft·kip ft·kips kips·ft k·ft",
  "kg/cm²": "kgf/cm2",
  psi: "lb/in2 lbs/in2 lb/sq·in",
  psf: "lb/ft2 lbs/ft2 lb/sq·ft",
  pci: "lb/in3 lbs/in3 lb/cu·in psi/in",
  pcf: "lb/ft3 lbs/ft3 lb/cu·ft",
  "lb/ft": "plf lbs/ft",
  deg: "° degree degrees",
  rad: "radian radians",
  turn: "turns",
  "°C": "c deg·c degc degrees·c celsius",
  "°F": "f deg·f degf degrees·f fahrenheit",
  min: "mins minute minutes",
  h: "hr hrs hour hours",
  d: "day days",
  week: "weeks wk wks",
  month: "months mo",
  year: "years yr yrs y",
  "km/h": "kph",
  "lb/yd³": "pcy lbs/yd3 lb/cu·yd",
  "%": "percent per·cent",
};

/** lb-ft, ft-lbs, foot-pounds …: both orders of every pair of names. */
const torques = (force: string, length: string): readonly string[] =>
  force.split(" ").flatMap((f) => length.split(" ").flatMap((l) => [`${f}·${l}`, `${l}·${f}`, `${l}${f}`]));

/** One spelling for all the ways to join its words; case and exponents ironed out. */
export const ironUnit = (text: string): string =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/\.$/, "")
    .replace(/\^/g, "")
    .replace(/\s*\/\s*/g, "/")
    .replace(/(?<=[^/\s])\s*(?:[·⋅•*.-]|\s)\s*(?=[a-z])/g, "·")
    .trim();

const table: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...torques("lb lbs lbf pound pounds", "in inch").map((s): [string, Unit] => [s, "lb-in"]),
  ...torques("lb lbs lbf pound pounds", "ft foot feet").map((s): [string, Unit] => [s, "lb-ft"]),
  ...Object.entries(spelled).flatMap(([unit, list]) => list.split(" ").map((s): [string, Unit] => [s, unit as Unit])),
  ...(Object.keys(units) as Unit[]).filter((u) => u !== "").map((u): [string, Unit] => [ironUnit(u), u]),
]);

/** The unit a text names, whatever its spelling; undefined when it names none. */
export const unitOf = (text: string): Unit | undefined => table.get(ironUnit(text));
