/**
 * Lays the plate beside CalculiX on a two-column bay with thickened pads: same floor, same springs, S8R shells.
 * Run: npx tsx bench/calculix.ts (needs ccx, Debian package calculix-ccx); add --keep to write tests/kept/calculix again.
 *
 * The shells shear, the thin plate does not. To show that this is the difference, the bay is also run with shells two and
 * four times thinner and the same stiffness D: their stress times thin² tends to the plate's.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { loads } from "./calculix/bay.ts";
import { type Case, cases, mesh } from "./calculix/cases.ts";
import { compare, type Difference, type Kept, keep, liftedNodes, plateResult } from "./calculix/compare.ts";
import { deck } from "./calculix/deck.ts";
import { calculixVersion, hasCalculix, runCalculix } from "./calculix/run.ts";

const percent = (difference: { shells: number; plate: number }): string =>
  `${difference.plate.toFixed(4)} against ${difference.shells.toFixed(4)} (${((difference.plate / difference.shells - 1) * 100).toFixed(2)} %)`;

const print = (name: string, d: Difference, seconds: number): void => {
  console.log(`${name} (CalculiX ${seconds.toFixed(1)} s)`);
  console.log(`  deflection, mm          ${percent({ shells: d.deflection.shells, plate: d.deflection.plate })} thin`);
  console.log(
    `                          ${percent({ shells: d.deflection.shells, plate: d.deflection.plateWithShear })} with shear`,
  );
  console.log(`  stress underside, MPa   ${percent(d.bottom)}`);
  console.log(`  stress top, MPa         ${percent(d.top)}`);
  console.log(`  thin slab beyond pads   ${percent(d.thinSlab)}`);
};

/** Runs CalculiX until the nodes whose springs would pull are the ones without springs. */
const run = ({ floor, support }: Case, thin = 1): { text: string; kept: Kept; seconds: number } => {
  let open: ReadonlySet<number> = new Set<number>();
  for (let round = 0; round < 20; round++) {
    const text = deck(floor, mesh, open, thin);
    const result = runCalculix(text);
    const lifted = support === "both-ways" ? open : liftedNodes(floor, mesh, result);
    if (lifted.size === open.size && [...lifted].every((n) => open.has(n)))
      return { text, kept: keep(floor, mesh, result, thin), seconds: result.seconds };
    open = lifted;
  }
  throw new Error("CalculiX: the set of lifted nodes did not settle");
};

if (!hasCalculix())
  console.log("ccx is not installed: nothing to compare with. tests/calculix compares with the kept result.");
else {
  const folder = new URL("../tests/kept/calculix/", import.meta.url);
  const differences: Record<string, Difference> = {};
  for (const one of cases) {
    const { text, kept, seconds } = run(one);
    const plate = plateResult(one.floor, loads, one.support);
    differences[one.name] = compare(one.floor, kept, plate);
    print(one.name, differences[one.name]!, seconds);
    if (process.argv.includes("--keep")) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(new URL(`${one.name}.inp`, folder), text);
      writeFileSync(new URL(`${one.name}.result.json`, folder), `${JSON.stringify(kept)}\n`);
    }
  }
  for (const thin of [2, 4]) {
    const { kept, seconds } = run(cases[0]!, thin);
    const plate = plateResult(cases[0]!.floor, loads, "both-ways");
    differences[`bay, shells ${thin} times thinner`] = compare(cases[0]!.floor, kept, plate);
    print(`bay, shells ${thin} times thinner, same D`, differences[`bay, shells ${thin} times thinner`]!, seconds);
  }
  if (process.argv.includes("--keep"))
    writeFileSync(
      new URL("difference.json", folder),
      `${JSON.stringify({ madeBy: "npx tsx bench/calculix.ts --keep", calculix: calculixVersion(), differences }, null, 2)}\n`,
    );
}
