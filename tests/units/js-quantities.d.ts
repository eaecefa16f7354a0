/** The part of js-quantities that the tests use as a second route; the package ships no types. */

declare module 'js-quantities' {
  export default class Qty {
    constructor(value: number, unit: string);
    readonly scalar: number;
    to(unit: string): Qty;
  }
}
