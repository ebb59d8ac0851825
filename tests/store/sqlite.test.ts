import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { storeContract } from "./contract.ts";

const folder = mkdtempSync(join(tmpdir(), "floorworthy-store-"));
let made = 0;
storeContract("SQLite", () => join(folder, `deep/${++made}/jobs.sqlite`));
