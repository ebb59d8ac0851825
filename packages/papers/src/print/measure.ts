/** Numbers as the trade writes them. Base units in (mm, MPa, mm³, °C), words out. */
export type UnitSystem = "inch-pound" | "si";

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** A count of sixteenths as "4", "4 1/4" or "3/8". */
const sixteenths = (count: number): string => {
  const whole = Math.floor(count / 16);
  const rest = count % 16;
  if (rest === 0) return String(whole);
  const g = gcd(rest, 16);
  return `${whole ? `${whole} ` : ""}${rest / g}/${16 / g}`;
};

const grouped = (n: number): string => String(Math.round(n)).replace(/\B(?=(\d{3})+$)/g, ",");

/** A depth or a thickness: "4 1/4 in" to the nearest 1/16, or "108 mm". */
export const printLength = (mm: number, units: UnitSystem): string => {
  if (!Number.isFinite(mm)) return "not known";
  if (units === "si") return `${Math.abs(mm) < 10 ? Math.round(mm * 10) / 10 : Math.round(mm)} mm`;
  const sign = mm < 0 ? "-" : "";
  return `${sign}${sixteenths(Math.round((Math.abs(mm) / 25.4) * 16))} in`;
};

/** A distance to be set out with a tape: 11'-8 1/2" to the nearest 1/16 in, or whole millimetres. */
export const printFeet = (mm: number, units: UnitSystem): string => {
  if (!Number.isFinite(mm)) return "not known";
  if (units === "si") return `${Math.round(mm)}`;
  const count = Math.round((Math.abs(mm) / 25.4) * 16);
  const feet = Math.floor(count / 192);
  const inches = `${sixteenths(count % 192)}"`;
  return `${mm < 0 && count > 0 ? "-" : ""}${feet ? `${feet}'-${inches}` : inches}`;
};

/** "4,000 psi" to the nearest 10, or "28 MPa". */
export const printStress = (mpa: number, units: UnitSystem): string =>
  units === "si" ? `${Math.round(mpa * 10) / 10} MPa` : `${grouped(Math.round((mpa * 145.0377377) / 10) * 10)} psi`;

/** "1.85 cu yd" or "1.42 m³". */
export const printVolume = (mm3: number, units: UnitSystem): string =>
  units === "si" ? `${(mm3 / 1e9).toFixed(2)} m³` : `${(mm3 / 764554857.984).toFixed(2)} cu yd`;

export const printTemperature = (celsius: number, units: UnitSystem): string =>
  units === "si" ? `${Math.round(celsius)} °C` : `${Math.round(celsius * 1.8 + 32)} °F`;
