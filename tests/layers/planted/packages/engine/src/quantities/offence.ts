import { readFileSync } from "node:fs";
import { whatAJobIs } from "../../../job/src/job.ts";
import { nothing } from "./not-there.ts";

export const offence = [readFileSync, whatAJobIs, nothing];
