/**
 * A finite beam with free ends on springs, under point loads and couples anywhere.
 *
 * Method: Hetenyi's superposition: the infinite beam under the given loads, plus a force and a couple just outside each
 * end chosen so that M and V vanish there; stable for any length. Hetenyi 1946, ch. III [hetenyi-1946].
 * Fails: never (the four equations are regular for length > 0).
 */
import { type BeamOnGround, type BeamState, infiniteUnderCouple, infiniteUnderLoad } from "./beam-on-ground.ts";
import { solveDense } from "./solve-dense.ts";

/** A load at `at` mm from the left end: force down N, clockwise couple N·mm. */
export interface BeamLoad {
  readonly at: number;
  readonly force: number;
  readonly couple: number;
}

/** A solved beam: its state anywhere between 0 and its length; under a load, the state just right of it. */
export type BeamSolution = (x: number) => BeamState;

export const finiteBeam = (beam: BeamOnGround, length: number, loads: readonly BeamLoad[]): BeamSolution => {
  const endForces: readonly BeamSolution[] = [
    (x) => infiniteUnderLoad(beam, 1, x),
    (x) => infiniteUnderCouple(beam, 1, x),
    (x) => mirrored(infiniteUnderLoad(beam, 1, length - x)),
    (x) => mirrored(infiniteUnderCouple(beam, 1, length - x)),
  ];
  const given: BeamSolution = (x) =>
    combined(
      loads.flatMap(({ at, force, couple }) => [
        [force, infiniteUnderLoad(beam, 1, x - at)],
        [couple, infiniteUnderCouple(beam, 1, x - at)],
      ]),
    );
  // Outside both ends nothing may be left over. `given` is right of a load: step back over those that stand on the left end.
  const standing = loads.filter((load) => load.at === 0);
  const left = given(0);
  const leftM = left.M - standing.reduce((s, load) => s + load.couple, 0);
  const leftV = left.V + standing.reduce((s, load) => s + load.force, 0);
  const right = given(length);
  const at = (x: number, part: "M" | "V") => endForces.map((f) => f(x)[part]);
  const c = solveDense(
    [at(0, "M"), at(0, "V"), at(length, "M"), at(length, "V")],
    [-leftM, -leftV, -right.M, -right.V],
  );
  return (x) => combined([[1, given(x)], ...endForces.map((f, i): [number, BeamState] => [c[i]!, f(x)])]);
};

const combined = (parts: readonly (readonly [number, BeamState])[]): BeamState => {
  let [y, slope, M, V] = [0, 0, 0, 0];
  for (const [f, s] of parts) [y, slope, M, V] = [y + f * s.y, slope + f * s.slope, M + f * s.M, V + f * s.V];
  return { y, slope, M, V };
};

/** The same beam looked at from behind: y and M stay, slope and V turn. */
const mirrored = (s: BeamState): BeamState => ({ y: s.y, slope: -s.slope, M: s.M, V: -s.V });
