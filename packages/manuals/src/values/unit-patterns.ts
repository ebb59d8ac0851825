import type { Unit } from "@floorworthy/engine/quantities";

/** A unit in running text. `times` turns it into `unit` where the engine knows no such unit. */
export interface UnitPattern {
  readonly pattern: string;
  readonly unit: Unit;
  readonly times?: number;
}

const pounds = "(?:lbs?|lbf|pounds?)\\.?";
const feet = "(?:ft|foot|feet)\\.?";
const square = "(?:sq(?:uare|\\.)? ?(?:in(?:ch)?\\.?)|in\\.?(?:²|2|\\^2))";
const end = "(?![\\p{L}\\d²³])";

/** In the order they are tried: what is longer and more telling comes first. */
export const unitPatterns: readonly UnitPattern[] = [
  { pattern: `${pounds} ?(?:/|per) ?${square}`, unit: "psi" },
  { pattern: `p\\.?s\\.?i\\.?${end}`, unit: "psi" },
  { pattern: `ksi${end}`, unit: "ksi" },
  { pattern: `MPa${end}`, unit: "MPa" },
  { pattern: `MN/m(?:²|2)${end}`, unit: "MPa" },
  { pattern: `kPa${end}`, unit: "kPa" },
  { pattern: `N ?/ ?(?:sq\\.? )?mm(?:²|2|\\^2)?${end}`, unit: "N/mm²" },
  { pattern: `(?:kgf?|kp) ?/ ?(?:sq\\.? )?cm(?:²|2|\\^2)?${end}`, unit: "kg/cm²" },
  { pattern: `${feet} ?[-·.•⋅*/]? ?${pounds}${end}`, unit: "lb-ft" },
  { pattern: `${pounds} ?[-·.•⋅*/]? ?${feet}${end}`, unit: "lb-ft" },
  { pattern: `in(?:ch)?\\.? ?[-·.•⋅*/]? ?${pounds}${end}`, unit: "lb-in" },
  { pattern: `${pounds} ?[-·•⋅*/] ?in(?:ch(?:es)?)?\\.?${end}`, unit: "lb-in" },
  { pattern: `kN ?[-·.•⋅*]? ?m${end}`, unit: "kN·m" },
  { pattern: `N ?[-·.•⋅*]? ?m${end}`, unit: "N·m" },
  { pattern: `daN ?[-·.•⋅*]? ?m${end}`, unit: "N·m", times: 10 },
  { pattern: `(?:kgf?|kp) ?[-·.•⋅*] ?m${end}|kgm${end}`, unit: "N·m", times: 9.80665 },
  { pattern: `(?:mm|millimet(?:er|re)s?)${end}`, unit: "mm" },
  { pattern: `(?:cm|centimet(?:er|re)s?)${end}`, unit: "cm" },
  { pattern: `(?:m|met(?:er|re)s?)${end}`, unit: "m" },
  { pattern: `(?:in(?:ch(?:es)?)?(?![\\p{L}\\d])\\.?|["”″]|''|’’)`, unit: "in" },
  { pattern: `(?:(?:ft|feet|foot)(?![\\p{L}\\d])\\.?|['’′])`, unit: "ft" },
  { pattern: `kN${end}`, unit: "kN" },
  { pattern: `daN${end}`, unit: "N", times: 10 },
  { pattern: `N${end}`, unit: "N" },
  { pattern: `(?:kgs?|kilograms?|kp)${end}\\.?`, unit: "kg" },
  { pattern: `(?:t|tonnes?)${end}`, unit: "t" },
  { pattern: `(?:lbs?|lbf|pounds?)(?![\\p{L}\\d])\\.?`, unit: "lb" },
  { pattern: `kips?${end}`, unit: "kip" },
  { pattern: `days?${end}`, unit: "d" },
  { pattern: `(?:hours?|hrs?|h)${end}`, unit: "h" },
  { pattern: `(?:weeks?|wks?)${end}`, unit: "week" },
  { pattern: `months?${end}`, unit: "month" },
  { pattern: `(?:years?|yrs?)${end}`, unit: "year" },
  { pattern: `%`, unit: "%" },
  { pattern: `(?:°(?! ?[CF])|deg(?:rees?)?${end})`, unit: "deg" },
];
