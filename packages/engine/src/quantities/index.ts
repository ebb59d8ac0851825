export { capital } from "./capital.ts";
export { type DimensionWords, dimensionWords } from "./dimension-words.ts";
export { preferredUnit, type UnitSystem } from "./preferred-units.ts";
export {
  type PrintOptions,
  printFeetInches,
  printFraction,
  printInUnit,
  printNumber,
  printQuantity,
} from "./print-quantity.ts";
export { type QuantityProblem, type QuantityReading, readQuantity } from "./read-quantity.ts";
export { shown } from "./shown.ts";
export { unitOf } from "./unit-spellings.ts";
export { type Dimension, dimensionOf, fromBase, toBase, type Unit, units } from "./units.ts";
export { type Check, isUnable, type Term, type Unable, unable } from "./workings.ts";
