/**
 * Plastic moments of a slab per unit width (N·mm/mm = N): `Mp` sagging (bottom in tension), `Mn` hogging (top).
 * Each is divided by the partial factor the caller chooses; 1 for a bare estimate.
 */
export interface SlabMoments {
  readonly Mp: number;
  readonly Mn: number;
}

/** `fr h²/6`: moment at first crack, N. @param fr - flexural strength, MPa */
export const crackingMoment = (fr: number, h: number): number => (fr * h * h) / 6;

/**
 * Plain concrete carries nothing across an open crack: Mp = 0. Only the last, circular crack at the top still has its
 * first strength. The collapse load made of these is a rough figure without ductility behind it.
 */
export const plainMoments = (fr: number, h: number): SlabMoments => ({ Mp: 0, Mn: crackingMoment(fr, h) });

/**
 * Steel or macro fibres by residual strength ratio: `Mp = (Re3/100) fr h²/6`, `Mn = fr h²/6`.
 * Concrete Society TR34, 3rd ed. 2003, Eqs 9.6 and 9.7; formula from memory [tr34].
 * @param Re3 - residual strength ratio, %
 */
export const fibreMoments = (fr: number, h: number, Re3: number): SlabMoments => ({
  Mp: (Re3 / 100) * crackingMoment(fr, h),
  Mn: crackingMoment(fr, h),
});

/**
 * Fibres by notched-beam residual strengths: `Mp = h² (0.29 σr4 + 0.16 σr1)`, σr1 = 0.45 fR1, σr4 = 0.37 fR4.
 * Concrete Society TR34, 4th ed. 2013, Eq. 4; formula from memory [tr34].
 */
export const fibreMomentsFromBeams = (fr: number, h: number, fR1: number, fR4: number): SlabMoments => ({
  Mp: h * h * (0.29 * 0.37 * fR4 + 0.16 * 0.45 * fR1),
  Mn: crackingMoment(fr, h),
});

/** One layer of mesh or bars. */
export interface SteelLayer {
  /** area per width, mm²/mm */
  readonly area: number;
  /** yield strength, MPa */
  readonly fy: number;
  /** from the compression face to the steel, mm */
  readonly depth: number;
}

/** `As fy (d − As fy / 1.7 f'c)`: moment of one layer with a rectangular stress block, N. Nothing where d ≤ half the block. */
export const steelMoment = ({ area, fy, depth }: SteelLayer, fc: number): number =>
  Math.max(0, area * fy * (depth - (area * fy) / (1.7 * fc)));

/**
 * Mesh or bars: Mp of the bottom layer, Mn of the top layer, and for Mn not less than the cracking moment of the plain
 * section, as for plain concrete.
 */
export const steelMoments = (
  fr: number,
  h: number,
  fc: number,
  layers: { readonly bottom?: SteelLayer; readonly top?: SteelLayer },
): SlabMoments => ({
  Mp: layers.bottom ? steelMoment(layers.bottom, fc) : 0,
  Mn: Math.max(crackingMoment(fr, h), layers.top ? steelMoment(layers.top, fc) : 0),
});
