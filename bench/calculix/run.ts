import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Shell results of one CalculiX run. */
export interface ShellResult {
  /** w = -U3 by node number, mm */
  readonly w: ReadonlyMap<number, number>;
  /** in-plane stresses by element and integration point, MPa */
  readonly stress: ReadonlyMap<number, readonly (readonly [number, number, number])[]>;
  readonly seconds: number;
}

export const hasCalculix = (): boolean => spawnSync("ccx", ["-v"], { stdio: "ignore" }).error === undefined;

export const calculixVersion = (): string =>
  /Version\s+(\S+)/.exec(spawnSync("ccx", ["-v"], { encoding: "utf8" }).stdout ?? "")?.[1] ?? "unknown";

export const runCalculix = (deck: string): ShellResult => {
  const folder = mkdtempSync(join(tmpdir(), "floorworthy-ccx-"));
  try {
    writeFileSync(join(folder, "bay.inp"), deck);
    const start = performance.now();
    execFileSync("ccx", ["bay"], { cwd: folder, stdio: "ignore", env: { ...process.env, OMP_NUM_THREADS: "1" } });
    const seconds = (performance.now() - start) / 1000;
    return { ...readDat(readFileSync(join(folder, "bay.dat"), "utf8")), seconds };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const readDat = (text: string): Pick<ShellResult, "w" | "stress"> => {
  const w = new Map<number, number>();
  const stress = new Map<number, [number, number, number][]>();
  let kind: "stress" | "displacement" | undefined;
  for (const line of text.split("\n")) {
    if (line.includes("stresses")) kind = "stress";
    else if (line.includes("displacements")) kind = "displacement";
    const f = line
      .trim()
      .split(/\s+/)
      .slice(0, kind === "stress" ? 6 : 4)
      .map(Number);
    if (f.length < 4 || f.some(Number.isNaN)) continue;
    if (kind === "displacement") w.set(f[0]!, -f[3]!);
    else if (kind === "stress") {
      if (!stress.has(f[0]!)) stress.set(f[0]!, []);
      stress.get(f[0]!)![f[1]! - 1] = [f[2]!, f[3]!, f[5]!];
    }
  }
  return { w, stress };
};
