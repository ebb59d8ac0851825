// Writes what follows from the declarations of the job form: the two JSON Schemas and the tables of docs/job-file.md.
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { tsImport } from "tsx/esm/api";

const root = fileURLToPath(new URL("..", import.meta.url));
const { issueTable, jobJsonSchema, keyTables, liftJsonSchema } = await tsImport(
  "../packages/job/src/schema/index.ts",
  import.meta.url,
);

writeFileSync(`${root}packages/job/job.schema.json`, `${JSON.stringify(jobJsonSchema(), null, 1)}\n`);
writeFileSync(`${root}packages/job/lift.schema.json`, `${JSON.stringify(liftJsonSchema(), null, 1)}\n`);
spawnSync(
  `${root}node_modules/.bin/biome`,
  ["format", "--write", "packages/job/job.schema.json", "packages/job/lift.schema.json"],
  { cwd: root },
);

const page = `${root}docs/job-file.md`;
const between = (text, mark, content) =>
  text.replace(
    new RegExp(`(<!-- ${mark} -->\n)[^]*?(<!-- /${mark} -->)`),
    (_, open, close) => `${open}${content}\n${close}`,
  );
writeFileSync(page, between(between(readFileSync(page, "utf8"), "keys", keyTables()), "issues", issueTable()));
