import { distanceToSegment, type Point } from "@floorworthy/engine/geometry";
import { type Floor, type FloorLoad, type FloorResult, solveFloor } from "@floorworthy/engine/plates";
import { basePlates } from "./bay.ts";
import { tributary } from "./deck.ts";
import type { Mesh } from "./mesh.ts";
import type { ShellResult } from "./run.ts";

export interface Stress {
  readonly sx: number;
  readonly sy: number;
  readonly sxy: number;
}

/** What CalculiX says, thinned to what the comparison needs: this is what is kept. */
export interface Kept {
  readonly nodes: readonly { readonly x: number; readonly y: number; readonly w: number }[];
  /** on the underside, at the integration points, where the principal tension of either face is worth looking at */
  readonly points: readonly ({ readonly x: number; readonly y: number; readonly h: number } & Stress)[];
}

export interface Difference {
  readonly deflection: { readonly shells: number; readonly plate: number; readonly plateWithShear: number };
  /** largest difference over all nodes, shear included, over the largest deflection */
  readonly worstDeflection: number;
  readonly bottom: { readonly shells: number; readonly plate: number };
  readonly top: { readonly shells: number; readonly plate: number };
  readonly thinSlab: { readonly shells: number; readonly plate: number };
}

const g = Math.sqrt(1 / 3);

export const keep = (floor: Floor, mesh: Mesh, shells: ShellResult, thin = 1): Kept => {
  const points = clearPoints(floor, mesh, shells, thin);
  const strength = (p: Stress): number => Math.max(tension(p), tension(turned(p)));
  const enough = 0.25 * Math.max(...points.map(strength));
  return {
    nodes: mesh.nodes.map(({ id, x, y }) => ({ x: round(x, 9), y: round(y, 9), w: round(shells.w.get(id)!, 7) })),
    points: points.filter((p) => strength(p) > enough),
  };
};

const clearPoints = (floor: Floor, mesh: Mesh, { stress }: ShellResult, thin: number): Kept["points"] =>
  mesh.elements.flatMap((e) =>
    [0, 1, 2, 3].flatMap((i) => {
      const x = (e.x0 + e.x1) / 2 + ((i % 2 === 0 ? -g : g) * (e.x1 - e.x0)) / 2;
      const y = (e.y0 + e.y1) / 2 + ((i < 2 ? -g : g) * (e.y1 - e.y0)) / 2;
      // linear through the depth: the points stand at h / (2 √3); a plate `thin` times thinner has thin² the stress
      const [sx, sy, sxy] = stress.get(e.id)![i]!.map((s) => round((s * Math.sqrt(3)) / thin ** 2, 6)) as [
        number,
        number,
        number,
      ];
      return nearPadEdge(floor, { x, y }) ? [] : [{ x: round(x, 9), y: round(y, 9), h: e.thickness, sx, sy, sxy }];
    }),
  );

const round = (value: number, digits: number): number => Number(value.toPrecision(digits));

/** Within the thin slab's depth of a jump of thickness neither theory means much. */
const nearPadEdge = (floor: Floor, p: Point): boolean =>
  floor.zones.some(({ rect: r }) =>
    [
      [r.x0, r.y0, r.x1, r.y0],
      [r.x1, r.y0, r.x1, r.y1],
      [r.x1, r.y1, r.x0, r.y1],
      [r.x0, r.y1, r.x0, r.y0],
    ].some(
      ([ax, ay, bx, by]) => distanceToSegment(p, { a: { x: ax!, y: ay! }, b: { x: bx!, y: by! } }) < floor.thickness,
    ),
  );

export const plateResult = (
  floor: Floor,
  loads: readonly FloorLoad[],
  support: "both-ways" | "pushes-only",
): FloorResult => {
  const results = solveFloor(floor, [{ name: support, loads }], { support, focus: basePlates });
  if ("unable" in results) throw new Error(results.reason);
  return results[0]!;
};

/** Both at the same points: deflection at the nodes, principal tension at the integration points. */
export const compare = (floor: Floor, kept: Kept, plate: FloorResult): Difference => {
  const deepest = kept.nodes.reduce((best, n) => (n.w > best.w ? n : best));
  const largest = Math.max(...kept.nodes.map((n) => Math.abs(n.w)));
  const withShear = (p: Point): number => plate.deflectionAt(p) + plate.shearDeflectionAt(p);
  // on a pad edge the shear term jumps with the thickness: nodes that stand on one are left to the others
  const clear = kept.nodes.filter((n) => !nearPadEdge(floor, n));
  const both = kept.points.map((p) => {
    const { Mx, My, Mxy } = plate.momentsAt(p);
    const m = 6 / p.h ** 2;
    const own = { sx: m * Mx, sy: m * My, sxy: m * Mxy };
    return {
      h: p.h,
      bottom: { shells: tension(p), plate: tension(own) },
      top: { shells: tension(turned(p)), plate: tension(turned(own)) },
    };
  });
  const worst = (pairs: { shells: number; plate: number }[]): { shells: number; plate: number } => ({
    shells: Math.max(...pairs.map((p) => p.shells)),
    plate: Math.max(...pairs.map((p) => p.plate)),
  });
  return {
    deflection: { shells: deepest.w, plate: plate.deflectionAt(deepest), plateWithShear: withShear(deepest) },
    worstDeflection: Math.max(...clear.map((n) => Math.abs(withShear(n) - n.w))) / largest,
    bottom: worst(both.map((b) => b.bottom)),
    top: worst(both.map((b) => b.top)),
    thinSlab: worst(both.filter((b) => b.h === floor.thickness).map((b) => b.bottom)),
  };
};

const tension = ({ sx, sy, sxy }: Stress): number => (sx + sy) / 2 + Math.hypot((sx - sy) / 2, sxy);
const turned = ({ sx, sy, sxy }: Stress): Stress => ({ sx: -sx, sy: -sy, sxy: -sxy });

/** The nodes whose springs would pull: those to open in the next run. */
export const liftedNodes = (floor: Floor, mesh: Mesh, { w }: Pick<ShellResult, "w">): Set<number> => {
  const { area, weight } = tributary(floor, mesh);
  return new Set(
    mesh.nodes.flatMap(({ id }) => (floor.k * area.get(id)! * w.get(id)! + weight.get(id)! < 0 ? [id] : [])),
  );
};
