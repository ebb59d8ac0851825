declare module "js-quantities" {
  /** The part of the library the tests use. */
  export default class Qty {
    constructor(text: string);
    to(unit: string): Qty;
    readonly scalar: number;
  }
}
