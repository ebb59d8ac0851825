import type { BandMatrix } from "./band-matrix.ts";

/**
 * The one seam between the plate solver and whatever factorises its matrix. Another kernel (WebAssembly, say) only
 * has to keep these two promises on the storage of `BandMatrix`.
 */
export interface BandKernel {
  readonly name: string;
  /**
   * Overwrites the lower half of A with L, A = L Lᵀ, and returns it with what `solve` needs.
   * Returns the first row whose pivot is not positive when A is not positive definite.
   */
  factor(matrix: BandMatrix): BandFactor | NotPositive;
  /** Overwrites b with A⁻¹ b; `b` holds at least `order` numbers. */
  solve(factor: BandFactor, b: Float64Array): void;
}

export interface BandFactor {
  readonly kind: "factor";
  readonly matrix: BandMatrix;
  /** 1 / L(i, i) */
  readonly inverseDiagonal: Float64Array;
}

export interface NotPositive {
  readonly kind: "not-positive";
  readonly row: number;
}
