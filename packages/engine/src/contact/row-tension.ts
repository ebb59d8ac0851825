import type { Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";

/**
 * Pull of the outer anchor row by hand: moments about the compression toe, all concrete force taken at the toe.
 * A screen to lay beside `solveContact`, not a replacement. Common practice, no source.
 *
 * @param toeDistance - d_c: plate centre to toe, mm @param leverArm - z: outer row to toe, mm
 * @returns T = (M − P d_c)/z, N; 0 where the load alone holds the row down
 */
export const rowTension = (P: number, M: number, toeDistance: number, leverArm: number): Term => ({
  symbol: "T",
  words: "pull of the outer anchor row, moments about the toe",
  value: Math.max(0, (M - P * toeDistance) / leverArm),
  unit: "N",
  clause: "common practice, no source",
  formula: "(M − P d_c) / z ≥ 0",
  worked: `(${shown(M)} − ${shown(P)} × ${shown(toeDistance)}) / ${shown(leverArm)}`,
});
