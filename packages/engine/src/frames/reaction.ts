/**
 * What one base puts on the floor. Plan axes: x to the right from the left wall, y from the back wall toward the door.
 *
 * The moments follow the footing designer's convention: the resultant of P, Mx and My acts at
 * `x = My / P`, `y = Mx / P` from the centroid of the base. So My > 0 presses the +x side, Mx > 0 presses the +y side.
 */
export interface Reaction {
  /** N, downward positive */
  readonly P: number;
  /** N·mm, presses the +y side when positive */
  readonly Mx: number;
  /** N·mm, presses the +x side when positive */
  readonly My: number;
  /** N, shear on the floor along +x */
  readonly Vx: number;
  /** N, shear on the floor along +y */
  readonly Vy: number;
}
