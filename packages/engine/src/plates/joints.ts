/**
 * Springs across a broken line:  ½ ∫ shear [w]² + rotation [w,n]²  along the line, [·] = the jump across it.
 *
 * Outside the ends of a joint the line is sewn together with springs ten thousand times stiffer than the cells
 * beside it, so a joint over part of the length needs no special grid. A part-length hinge is sewn in shear only.
 */
import { type BandMatrix, bandIndex } from "../numerics/index.ts";
import { type Axis, evaluate, spanLength } from "./axis.ts";
import { breakLines, sameLine } from "./break-lines.ts";
import type { Floor, Joint } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";
import { insideFloor } from "./rim.ts";
import type { SpanIntegrals } from "./span-integrals.ts";

const sewing = 1e4;

export const addJointSprings = (
  matrix: BandMatrix,
  floor: Floor,
  grid: Grid,
  ix: SpanIntegrals,
  iy: SpanIntegrals,
): void => {
  for (const axis of ["x", "y"] as const) {
    const [across, along] = axis === "x" ? [grid.x, grid.y] : [grid.y, grid.x];
    const broken = breakLines(floor, axis, [])
      .filter((line) => line.multiplicity === 4)
      .slice(1, -1);
    for (const { at } of broken) {
      const right = across.breaks.indexOf(at);
      for (let t = 0; t < along.spans; t++)
        addPiece(matrix, floor, grid, axis, across, along, axis === "x" ? iy : ix, right, t);
    }
  }
};

/** The piece of the line beside span t of the axis along it. */
const addPiece = (
  matrix: BandMatrix,
  floor: Floor,
  grid: Grid,
  axis: "x" | "y",
  across: Axis,
  along: Axis,
  integrals: SpanIntegrals,
  right: number,
  t: number,
): void => {
  const middle = (along.breaks[t]! + along.breaks[t + 1]!) / 2;
  const at = across.breaks[right]!;
  if (!insideFloor(floor)(axis === "x" ? { x: at, y: middle } : { x: middle, y: at })) return;
  const cell = (s: number): number => (axis === "x" ? s * grid.y.spans + t : t * grid.y.spans + s);
  const D = Math.max(
    flexuralRigidity(floor.E, floor.nu, grid.thickness[cell(right)]!),
    flexuralRigidity(floor.E, floor.nu, grid.thickness[cell(right - 1)]!),
  );
  const length = Math.min(spanLength(across, right), spanLength(across, right - 1));
  const sewn = { shear: (sewing * D) / length ** 3, rotation: (sewing * D) / length };
  const { shear, rotation } = springs(jointAt(floor, axis, across.breaks[right]!, middle), sewn);
  if (shear > 0) addJump(matrix, grid, axis, across, along, integrals.mass, right, t, 0, shear);
  if (rotation > 0) addJump(matrix, grid, axis, across, along, integrals.mass, right, t, 1, rotation);
};

const jointAt = (floor: Floor, axis: "x" | "y", at: number, along: number): Joint | undefined =>
  floor.joints.findLast(
    (j) =>
      j.axis === axis && Math.abs(j.at - at) < sameLine && along > (j.from ?? -Infinity) && along < (j.to ?? Infinity),
  );

const springs = (
  joint: Joint | undefined,
  sewn: { shear: number; rotation: number },
): { shear: number; rotation: number } => {
  if (!joint) return sewn;
  const { transfer } = joint;
  if (transfer.kind === "none") return { shear: 0, rotation: 0 };
  if (transfer.kind === "hinge") return { shear: sewn.shear, rotation: 0 };
  return { shear: Math.min(transfer.shear, sewn.shear), rotation: Math.min(transfer.rotation, sewn.rotation) };
};

/** stiffness × ∫ (jump of the `order`-th derivative)², the eight functions on both sides of the line. */
const addJump = (
  matrix: BandMatrix,
  grid: Grid,
  axis: "x" | "y",
  across: Axis,
  along: Axis,
  mass: Float64Array,
  right: number,
  t: number,
  order: 0 | 1,
  stiffness: number,
): void => {
  const jump = new Float64Array(8);
  evaluate(across, right - 1, 1, order, jump, 0);
  evaluate(across, right, 0, order, jump, 4);
  // what is zero on paper must be zero here: the springs are stiff, and six of eight functions do not reach the line
  const noise = 1e-9 * Math.max(...jump.map(Math.abs));
  for (let a = 0; a < 8; a++) jump[a] = Math.abs(jump[a]!) < noise ? 0 : a < 4 ? -jump[a]! : jump[a]!;
  const [strideAcross, strideAlong] = axis === "x" ? [grid.strideX, grid.strideY] : [grid.strideY, grid.strideX];
  const start = across.first[right - 1]! * strideAcross + along.first[t]! * strideAlong;
  for (let a = 0; a < 8; a++)
    for (let c = 0; c < 8; c++) {
      const both = stiffness * jump[a]! * jump[c]!;
      if (both === 0) continue;
      for (let b = 0; b < 4; b++)
        for (let d = 0; d < 4; d++) {
          const row = start + a * strideAcross + b * strideAlong;
          const column = start + c * strideAcross + d * strideAlong;
          if (column <= row) matrix.values[bandIndex(matrix, row, column)]! += both * mass[16 * t + 4 * b + d]!;
        }
    }
};
