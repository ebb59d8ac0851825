import type { Check, Term, Unit } from "@floorworthy/engine/quantities";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import type { UnitSystem } from "../facts/print.ts";

const inchPound: Readonly<Partial<Record<Unit, Unit>>> = {
  mm: "in",
  "mm²": "ft²",
  "mm³": "yd³",
  N: "lb",
  N·mm: "kip-in",
  MPa: "psi",
  "N/mm": "lb/in",
  "N/mm³": "pci",
};

const si: Readonly<Partial<Record<Unit, Unit>>> = {
  "mm²": "m²",
  "mm³": "m³",
  N: "kN",
  N·mm: "kN·m",
};

/** A term of base units in the job's own, down to its last input. Pressures on the ground are small: psf, kPa. */
export const inUnits = (term: Term, system: UnitSystem, pressure: "stress" | "ground" = "stress"): Term => {
  const to =
    term.unit === "MPa" && pressure === "ground"
      ? system === "si"
        ? "kPa"
        : "psf"
      : (system === "si" ? si : inchPound)[term.unit];
  const { from, ...rest } = term;
  const shown = to ? { ...rest, value: fromBase(toBase(term.value, term.unit), to), unit: to } : rest;
  return from ? { ...shown, from: from.map((t) => inUnits(t, system, pressure)) } : shown;
};

export const checkInUnits = <T extends Check>(check: T, system: UnitSystem): T => {
  const pressure = check.id.includes("ground-pressure") ? "ground" : "stress";
  return {
    ...check,
    demand: inUnits(check.demand, system, pressure),
    capacity: inUnits(check.capacity, system, pressure),
  };
};
