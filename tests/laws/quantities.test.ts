import {
  type Dimension,
  dimensionOf,
  dimensionWords,
  fromBase,
  printFeetInches,
  printFraction,
  printInUnit,
  printNumber,
  printQuantity,
  readQuantity,
  toBase,
  type Unit,
  unitOf,
  units,
} from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const allUnits = Object.keys(units) as Unit[];
const dimensions = Object.keys(dimensionWords) as Dimension[];
const unit = fc.constantFrom(...allUnits);
const dimension = fc.constantFrom(...dimensions);
const sensible = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const read = (text: string, of: Dimension) => {
  const reading = readQuantity(text, of);
  if (!reading.ok) throw new Error(`${text}: ${reading.message}`);
  return reading;
};

describe("what is printed reads back", () => {
  test("in any unit, to half of the last decimal printed", () => {
    fc.assert(
      fc.property(sensible, unit, fc.integer({ min: 1, max: 6 }), (value, u, precision) => {
        const back = read(printInUnit(value, u, { precision }), dimensionOf(u));
        const error = Math.abs(fromBase(back.value, u) - value);
        expect(error).toBeLessThanOrEqual(0.5 * 10 ** -precision + 1e-9 * Math.abs(value));
      }),
      { numRuns: 2000 },
    );
  });

  test("in the usual unit of either system", () => {
    fc.assert(
      fc.property(sensible, dimension, fc.constantFrom("inch-pound" as const, "si" as const), (value, d, system) => {
        const text = printQuantity(value, d, { system, precision: 12 });
        expect(Math.abs(read(text, d).value - value)).toBeLessThanOrEqual(1e-2 + 1e-3 * Math.abs(value));
      }),
      { numRuns: 1000 },
    );
  });

  test("as inch fractions to half of the fraction", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        fc.constantFrom(2, 4, 8, 16, 32),
        (inches, parts) => {
          const back = read(`${printFraction(inches, parts)} in`, "length");
          expect(Math.abs(fromBase(back.value, "in") - inches)).toBeLessThanOrEqual(0.5 / parts + 1e-9);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("as feet and inches to 1/32 in", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (mm) => {
        expect(Math.abs(read(printFeetInches(mm), "length").value - mm)).toBeLessThanOrEqual(25.4 / 32 + 1e-6);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("printing", () => {
  test("never shows NaN, whatever the number", () => {
    fc.assert(
      fc.property(fc.double(), dimension, fc.constantFrom(undefined, 2, 4, 8, 16, 32), (value, d, fraction) => {
        const texts = [
          printQuantity(value, d, { system: "inch-pound", ...(fraction && { fraction: fraction as 16 }) }),
          printQuantity(value, d, { system: "si" }),
          printFeetInches(value),
          printNumber(value, 3),
        ];
        for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|^-0$|^-0 /);
      }),
      { numRuns: 3000 },
    );
  });

  test.each([
    [114.3, { fraction: 16 as const }, "4 1/2 in"],
    [9.525, { fraction: 16 as const }, "3/8 in"],
    [0.1, { fraction: 16 as const }, "0 in"],
    [25.39, { fraction: 16 as const }, "1 in"],
    [-165.1, { fraction: 16 as const }, "-6 1/2 in"],
    [143.51, {}, "5.65 in"],
    [25_400_000, {}, "1,000,000 in"],
    [Number.NaN, {}, "—"],
  ])("%d mm prints as %o → %s", (mm, options, text) => {
    expect(printQuantity(mm, "length", { system: "inch-pound", ...options })).toBe(text);
  });

  test("a small number does not vanish", () => expect(printNumber(0.00042, 2)).toBe("0.00042"));
  test("feet and inches carry", () => expect(printFeetInches(toBase(11.99, "in"))).toBe(`1'-0"`));
});

describe("reading", () => {
  const same: readonly (readonly [Dimension, string, readonly string[]])[] = [
    [
      "length",
      "4.5 in",
      [
        "4 1/2 in",
        '4 1/2"',
        "4½ in",
        '4½"',
        "4-1/2 in",
        "4 1⁄2 ″",
        "4.5in",
        "4.50 inches",
        "4.5-in",
        "114.3 mm",
        "11.43 cm",
        "+4.5 in",
        "4,5".replace(",", ".").concat(" IN."),
      ],
    ],
    [
      "length",
      "66.5 in",
      [
        `5'-6 1/2"`,
        "5 ft 6 1/2 in",
        `5' 6.5"`,
        "5′-6½″",
        "5'6 1/2",
        "5 feet 6 1/2 inches",
        "5 ft. 6 1/2 in.",
        "5'–6 1/2''",
      ],
    ],
    ["force", "9000 lb", ["9,000 lb", "9 000 lb", "9000lbs", "9000#", "9 kips", "9000 pounds", "9.0 kip"]],
    ["stress", "3000 psi", ["3,000 psi", "3 ksi", "3000 PSI", "3000 lb/in²", "3000 lb/sq in", "432000 psf"]],
    [
      "moment",
      "120 lb-ft",
      [
        "120 ft-lb",
        "120 lb·ft",
        "120 ft lbs",
        "120 lbf-ft",
        "120 foot-pounds",
        "1440 in-lb",
        "1440 lb-in",
        "1.44 kip-in",
      ],
    ],
    [
      "moment",
      "90 N·m",
      ["90 Nm", "90 N m", "90 N-m", "90 newton·m".replace("newton", "N"), "0.09 kN·m", "90000 N·mm"],
    ],
    ["temperature", "70 °F", ["70 F", "70 deg F", "70°f", "70 degrees F"]],
    ["subgrade-modulus", "200 pci", ["200 lb/in³", "200 lb/in^3", "200 psi/in"]],
    ["number", "0.12", ["12 %", "12%", "12 percent", ".12"]],
    ["number", "1:96", ["1/8 in per ft", '1/8" per foot', "1/8 in/ft", "0.125 in per ft"]],
    ["volume", "2 yd³", ["2 cu yd", "2 yd3", "2 cubic yards", "54 ft³", "2 CY"]],
    ["time", "28 d", ["28 days", "4 weeks", "672 h", "28 day"]],
    ["angle", "90 deg", ["90°", "1/4 turn", "0.25 turns", "90 degrees"]],
  ];
  test.each(same.flatMap(([d, text, others]) => others.map((other) => [d, other, text] as const)))(
    "%s: %s is %s",
    (d, other, text) => {
      const [a, b] = [read(other, d).value, read(text, d).value];
      expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * Math.abs(b));
    },
  );

  test("every unit's printed name is read as that unit", () => {
    for (const u of allUnits) if (u !== "") expect(unitOf(u)).toBe(u);
  });

  test.each([
    ["4", "length", "bare-number", '"4" has no unit; a length was expected.'],
    ["0", "temperature", "bare-number", '"0" has no unit; a temperature was expected.'],
    ["4 lb", "length", "wrong-dimension", '"4 lb" is a weight or force; a length was expected.'],
    ["3000 lb", "stress", "wrong-dimension", '"3000 lb" is a weight; a strength or pressure was expected.'],
    ["1.234,5 in", "length", "ambiguous-number", '"1.234,5 in" can be read in two ways.'],
    ["1,5 in", "length", "ambiguous-number", '"1,5 in" can be read in two ways.'],
    ["12,34 in", "length", "ambiguous-number", '"12,34 in" can be read in two ways.'],
    ["1,23,456 lb", "force", "ambiguous-number", '"1,23,456 lb" can be read in two ways.'],
    ["six", "length", "not-a-quantity", '"six" is not a length.'],
    ["4 in x 5 in", "length", "not-a-quantity", '"4 in x 5 in" is not a length.'],
    ["4 1 in", "length", "not-a-quantity", '"4 1 in" is not a length.'],
    ["", "length", "not-a-quantity", '"" is not a length.'],
    ["4 furlongs", "length", "unknown-unit", '"4 furlongs": the unit "furlongs" is not known; a length was expected.'],
    ["5 tons", "force", "unknown-unit", '"5 tons" can be short tons or tonnes.'],
    ["5 ft 14 in", "length", "not-a-quantity", '"5 ft 14 in" has 12 inches or more after the feet.'],
    ["4 3/0 in", "length", "not-a-quantity", '"4 3/0 in" has a fraction that is not below one.'],
    ["1e400 in", "length", "number-too-large", '"1e400 in" is larger than any number this program can hold.'],
    ["4 in", "number", "wrong-dimension", '"4 in" is a length; a plain number was expected.'],
  ] as const)("%s as %s is refused: %s", (text, d, problem, message) => {
    expect(readQuantity(text, d)).toMatchObject({ ok: false, problem, message, hint: expect.stringMatching(/\.$/) });
  });

  test("never throws, never gives a number that is none, and always says what to write", () => {
    const pieces = fc.constantFrom(
      "4",
      "1/2",
      " ",
      "'",
      '"',
      "-",
      ",",
      ".",
      "ft",
      "in",
      "lb",
      "per",
      "/",
      "°",
      "½",
      "e9",
      "9".repeat(30),
      "psi",
      "m",
      "\u00a0",
      "𝟜",
    );
    const text = fc.oneof(
      fc.string({ maxLength: 80 }),
      fc.array(pieces, { maxLength: 9 }).map((all) => all.join("")),
    );
    fc.assert(
      fc.property(text, dimension, (written, d) => {
        const reading = readQuantity(written, d);
        if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
        else expect([reading.message.length > 5, reading.hint.length > 5]).toEqual([true, true]);
      }),
      { numRuns: 5000 },
    );
  });
});
