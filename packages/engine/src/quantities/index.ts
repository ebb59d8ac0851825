export { type Dimension, dimensionOf, fromBase, toBase, type Unit, units } from "./units.ts";
export { type Check, isUnable, type Term, type Unable, unable } from "./workings.ts";
