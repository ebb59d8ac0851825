/**
 * A small plane-frame program by the stiffness method (straight beam members, springs to ground), written apart from
 * the engine to check it: dense matrix, Gauss with pivoting. Textbook member matrices, e.g. McGuire, Gallagher & Ziemian,
 * Matrix Structural Analysis, 2nd ed., section 4.5 (from memory).
 */
export interface Member {
  readonly from: number;
  readonly to: number;
  readonly EA: number;
  /** 0 for a strut pinned at both ends */
  readonly EI: number;
}

export interface PlaneFrame {
  readonly nodes: readonly { readonly x: number; readonly z: number }[];
  readonly members: readonly Member[];
  /** per node [u, w, turn]: "fixed", "free", or a spring to ground */
  readonly supports: readonly (readonly ("fixed" | "free" | number)[])[];
  /** per node [Fx, Fz, couple]; couple and turn positive from +x toward +z */
  readonly loads: readonly (readonly number[])[];
}

/** Displacements per node and the force each support puts on the frame. */
export const solvePlaneFrame = ({ nodes, members, supports, loads }: PlaneFrame) => {
  const n = 3 * nodes.length;
  const K = Array.from({ length: n }, () => new Float64Array(n));
  for (const { from, to, EA, EI } of members) {
    const [a, b] = [nodes[from]!, nodes[to]!];
    const L = Math.hypot(b.x - a.x, b.z - a.z);
    const [c, s] = [(b.x - a.x) / L, (b.z - a.z) / L];
    const [p, q, r, t] = [EA / L, (12 * EI) / L ** 3, (6 * EI) / L ** 2, EI / L];
    const local = [
      [p, 0, 0, -p, 0, 0],
      [0, q, r, 0, -q, r],
      [0, r, 4 * t, 0, -r, 2 * t],
      [-p, 0, 0, p, 0, 0],
      [0, -q, -r, 0, q, -r],
      [0, r, 2 * t, 0, -r, 4 * t],
    ];
    const turn = (i: number, j: number): number => {
      const block = Math.floor(i / 3) === Math.floor(j / 3);
      const [u, v] = [i % 3, j % 3];
      if (!block) return 0;
      if (u === 2 || v === 2) return u === v ? 1 : 0;
      return u === v ? c : u === 0 ? s : -s;
    };
    const place = [3 * from, 3 * from + 1, 3 * from + 2, 3 * to, 3 * to + 1, 3 * to + 2];
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        let k = 0;
        for (let g = 0; g < 6; g++) for (let h = 0; h < 6; h++) k += turn(g, i) * local[g]![h]! * turn(h, j);
        K[place[i]!]![place[j]!]! += k;
      }
    }
  }
  const free = Array.from({ length: n }, (_, i) => i).filter((i) => supports[Math.floor(i / 3)]![i % 3] !== "fixed");
  const spring = (i: number): number => {
    const support = supports[Math.floor(i / 3)]![i % 3];
    return typeof support === "number" ? support : 0;
  };
  const force = (i: number): number => loads[Math.floor(i / 3)]![i % 3]!;
  const A = free.map((i) => [...free.map((j) => K[i]![j]! + (i === j ? spring(i) : 0)), force(i)]);
  const solved = gauss(A);
  const u = new Float64Array(n);
  free.forEach((i, k) => {
    u[i] = solved[k]!;
  });
  const reaction = (i: number): number => {
    let sum = -force(i);
    for (let j = 0; j < n; j++) sum += K[i]![j]! * u[j]!;
    return sum;
  };
  const triple = (f: (i: number) => number) => nodes.map((_, k) => [f(3 * k), f(3 * k + 1), f(3 * k + 2)] as const);
  return { moves: triple((i) => u[i]!), reactions: triple(reaction) };
};

const gauss = (A: number[][]): number[] => {
  const n = A.length;
  for (let k = 0; k < n; k++) {
    let p = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(A[i]![k]!) > Math.abs(A[p]![k]!)) p = i;
    [A[k], A[p]] = [A[p]!, A[k]!];
    for (let i = k + 1; i < n; i++) {
      const f = A[i]![k]! / A[k]![k]!;
      for (let j = k; j <= n; j++) A[i]![j]! -= f * A[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = A[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= A[i]![j]! * x[j]!;
    x[i] = sum / A[i]![i]!;
  }
  return x;
};
