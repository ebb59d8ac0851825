// 200 kills for each database; see scripts/kill-test.mjs.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { postgresHere, startPostgres } from "../../store/postgres.ts";
import { type KillFigures, killRounds } from "./rounds.ts";

const { values } = parseArgs({
  options: { rounds: { type: "string", default: "200" }, only: { type: "string" }, told: { type: "boolean" } },
});
const rounds = Number(values.rounds);
const tell = values.told ? console.log : undefined;

const figures: [string, KillFigures][] = [];
if (values.only !== "postgres") {
  const folder = mkdtempSync(join(tmpdir(), "floorworthy-killed-"));
  figures.push(["SQLite", await killRounds({ name: "SQLite", store: join(folder, "jobs.sqlite") }, rounds, tell)]);
  rmSync(folder, { recursive: true });
}
if (values.only !== "sqlite" && postgresHere) {
  const { fresh, crash, stop } = await startPostgres("on");
  figures.push(["PostgreSQL", await killRounds({ name: "PostgreSQL", store: fresh(), crash }, rounds, tell)]);
  stop();
}
for (const [name, each] of figures) {
  console.log(
    `${name}: ${each.rounds} kills (${each.whileStarting} while starting, ${each.databaseCrashes} of the database itself); ` +
      `${each.acknowledged} writes acknowledged, ${each.conflicts} told of a conflict, ${each.unanswered} cut off; ` +
      `${each.faults.length === 0 ? "nothing lost, nothing half written" : `${each.faults.length} FAULTS`}.`,
  );
  for (const fault of each.faults) console.log(`  ${fault}`);
}
process.exitCode = figures.some(([, { faults }]) => faults.length > 0) ? 1 : 0;
