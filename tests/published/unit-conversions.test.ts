/**
 * B. N. Taylor and A. Thompson: Guide for the Use of the International System of Units. NIST Special Publication 811,
 * 2008 edition, Appendix B.8, factors to seven digits (from memory), and the js-quantities library, version 1.8.0, which keeps a table of its own.
 */
import { fromBase, readQuantity, toBase, type Unit, units } from "@floorworthy/engine/quantities";
import Qty from "js-quantities";
import { describe, expect, test } from "vitest";

describe("NIST SP 811 (2008), Appendix B.8", () => {
  const rows: readonly (readonly [Unit, Unit, number])[] = [
    ["in", "mm", 25.4],
    ["ft", "m", 0.3048],
    ["yd", "m", 0.9144],
    ["lb", "N", 4.448222],
    ["kip", "kN", 4.448222],
    ["kg", "N", 9.80665],
    ["lb-ft", "N·m", 1.355818],
    ["lb-in", "N·m", 0.1129848],
    ["psi", "kPa", 6.894757],
    ["ksi", "MPa", 6.894757],
    ["psf", "kPa", 0.04788026],
    ["kg/cm²", "kPa", 98.0665],
    ["ft³", "m³", 0.02831685],
    ["yd³", "m³", 0.7645549],
    ["in²", "mm²", 645.16],
    ["ft²", "m²", 0.09290304],
    ["in⁴", "cm⁴", 41.62314],
    ["lb/in", "N/mm", 0.1751268],
    ["lb/ft", "N/mm", 0.0145939],
    ["mph", "m/s", 0.44704],
    ["lb/yd³", "kg/m³", 0.5932764],
  ];
  const exact: ReadonlySet<Unit> = new Set(["in", "ft", "yd", "kg", "kg/cm²", "in²", "ft²", "mph"]);
  test.each(rows)("1 %s in %s is %d", (from, to, printed) => {
    const value = fromBase(toBase(1, from), to);
    // printed in bold where it is exact, else to seven digits
    expect(Math.abs(value / printed - 1)).toBeLessThan(exact.has(from) ? 1e-12 : 5e-7);
  });
  test("32 °F is 0 °C and 212 °F is 100 °C", () => {
    expect(toBase(32, "°F")).toBeCloseTo(0, 12);
    expect(toBase(212, "°F")).toBeCloseTo(100, 12);
  });
});

describe("js-quantities 1.8.0", () => {
  const theirs: Partial<Record<Unit, readonly [string, string]>> = {
    mm: ["mm", "mm"],
    cm: ["cm", "mm"],
    m: ["m", "mm"],
    in: ["in", "mm"],
    ft: ["ft", "mm"],
    yd: ["yd", "mm"],
    "in²": ["in2", "mm2"],
    "ft²": ["ft2", "mm2"],
    "m²": ["m2", "mm2"],
    "in³": ["in3", "mm3"],
    "ft³": ["ft3", "mm3"],
    "yd³": ["yd3", "mm3"],
    N: ["N", "N"],
    kN: ["kN", "N"],
    lb: ["lbf", "N"],
    kip: ["klbf", "N"].map((u) => u.replace("klbf", "1000 lbf")) as [string, string],
    "lb-in": ["lbf*in", "N*mm"],
    "lb-ft": ["lbf*ft", "N*mm"],
    N·m: ["N*m", "N*mm"],
    psi: ["psi", "MPa"],
    psf: ["lbf/ft2", "MPa"],
    kPa: ["kPa", "MPa"],
    GPa: ["GPa", "MPa"],
    MPa: ["MPa", "MPa"],
    pci: ["lbf/in3", "N/mm3"],
    pcf: ["lbf/ft3", "N/mm3"],
    "lb/in": ["lbf/in", "N/mm"],
    "lb/ft": ["lbf/ft", "N/mm"],
    deg: ["deg", "rad"],
    h: ["h", "d"],
    min: ["min", "d"],
    week: ["week", "d"],
    mph: ["mph", "m/s"],
    "km/h": ["km/h", "m/s"],
    "in⁴": ["in4", "mm4"],
    "lb/yd³": ["lb/yd3", "kg/m3"],
    "lb/ft²/h": ["lb/ft2*h", "kg/m2*h"],
  };
  test.each(Object.entries(theirs))("1 %s", (ours, [from, base]) => {
    const expected = new Qty(/^\d/.test(from) ? from : `1 ${from}`).to(base).scalar;
    // its pound-force and psi are kept to 7 to 11 digits
    expect(toBase(1, ours as Unit) / expected).toBeCloseTo(1, 6);
  });
  test.each(["4.5 in", "12 ft", "150 mm", "2.5 m"])("reads %s the same", (text) => {
    const reading = readQuantity(text, "length");
    expect(reading.ok && reading.value).toBeCloseTo(new Qty(text).to("mm").scalar, 9);
  });
  test("names units this table has", () => expect(Object.keys(theirs).every((unit) => unit in units)).toBe(true));
});
