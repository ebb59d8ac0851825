/**
 * Bending of the thin slab at the line where it meets a thick pad cast with it.
 *
 * The pad sinks by w0 and turns by φ as a rigid block. It stands on springs and drags the slab along, each side's slab
 * being a wide beam on springs (λ = (3k/Eh³)^¼) whose end is pushed down by w and turned by θ:
 *
 *   force per length p = k(2λw + θ)/2λ²,   moment per length m = k(λw + θ)/2λ³       (from the semi-infinite beam)
 *   N  = w0 k [BL + 2(B+L)/λ]
 *   My = φx k [LB³/12 + LB(λB+1)/2λ² + L(λB+2)/2λ³ + B³/6λ],  and likewise about x
 *
 * The slab beyond the four corners is left out and the pad is rigid. Against a thin plate, pads of 0.9 to 1.8 m, two to
 * three times as thick as their slab: m is 2 % low to 45 % high at the line itself, about twice the plate's moment a slab
 * thickness away from it. A quick figure to stand beside the plate, never instead of it. Our own derivation.
 */
import type { Reaction } from "../frames/index.ts";
import type { Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";
import { type SlabOnGround, stripLambda } from "../slabs/index.ts";

/** Demands on the thin slab at the pad's edge. */
export interface ThinSlabEdge {
  /** largest bending moment per length, N·mm/mm */
  readonly moment: Term;
  /** 6m/h², MPa */
  readonly stress: Term;
  /** largest shear per length, N/mm */
  readonly shear: Term;
}

/**
 * @param pad - size along x and y, mm; the column stands at its centre
 * @param slab - the thin slab around it
 */
export const thinSlabEdge = (
  slab: SlabOnGround,
  pad: { readonly x: number; readonly y: number },
  reaction: Reaction,
): ThinSlabEdge => {
  const { k, h } = slab;
  const lambda = stripLambda(slab);
  const [B, L] = [pad.x, pad.y];
  const w0 = reaction.P / (k * (B * L + (2 * (B + L)) / lambda));
  const phiX = Math.abs(reaction.My) / (k * rotationalStiffness(B, L, lambda));
  const phiY = Math.abs(reaction.Mx) / (k * rotationalStiffness(L, B, lambda));
  const corner = w0 + (phiX * B) / 2 + (phiY * L) / 2;
  const turn = Math.max(phiX, phiY);
  const m = (k * (lambda * corner + turn)) / (2 * lambda ** 3);
  const p = (k * (2 * lambda * corner + turn)) / (2 * lambda ** 2);
  const from: readonly Term[] = [
    {
      symbol: "λ",
      words: "1/λ: reach of the bending into the thin slab",
      value: 1 / lambda,
      unit: "mm",
      formula: "(Eh³/3k)^¼",
    },
    { symbol: "w0", words: "sinking of the pad", value: w0, unit: "mm" },
    { symbol: "φx", words: "turning of the pad across", value: phiX, unit: "rad" },
    { symbol: "φy", words: "turning of the pad fore and aft", value: phiY, unit: "rad" },
  ];
  const words = "of the thin slab along the pad's edge";
  return {
    moment: {
      symbol: "m",
      words: `bending moment per length ${words}`,
      value: m,
      unit: "N",
      formula: "k(λw + φ)/2λ³",
      from,
    },
    stress: {
      symbol: "σ",
      words: `bending stress ${words}`,
      value: (6 * m) / (h * h),
      unit: "MPa",
      formula: "6m/h²",
      worked: `6 × ${shown(m)} / ${shown(h)}²`,
      from,
    },
    shear: { symbol: "p", words: `shear per length ${words}`, value: p, unit: "N/mm", formula: "k(2λw + φ)/2λ²", from },
  };
};

/** Moment per rotation and per k about the axis along L. */
const rotationalStiffness = (B: number, L: number, lambda: number): number =>
  (L * B ** 3) / 12 +
  (L * B * (lambda * B + 1)) / (2 * lambda ** 2) +
  (L * (lambda * B + 2)) / (2 * lambda ** 3) +
  B ** 3 / (6 * lambda);
