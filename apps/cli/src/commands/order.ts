import { assess } from "@floorworthy/assess";
import { orderFor } from "@floorworthy/assess/order";
import { isUnable } from "@floorworthy/engine/quantities";
import { readyMixSheet } from "@floorworthy/papers";
import { orderCsv } from "@floorworthy/papers/csv";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { orderLines } from "../print/order.ts";
import { teller, writeSheets } from "../write-sheet.ts";

interface OrderOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly workings?: boolean;
  readonly remedy?: string;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const orderCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "order", "concrete, mix, steel and everything else to get for the pour, with prices")
      .option("--remedy <id>", "price this remedy where the job draws no pad: strip or separate-pads")
      .option("--json", "print the order as JSON")
      .option("--csv", "print the list as comma-separated values")
      .option("--workings", "unfold every quantity")
      .option("--out <dir>", "write the ready-mix order, PDF and SVG, to this folder"),
  ).action(
    withJob(async (job, options: OrderOptions, path): Promise<ExitCode> => {
      const { json, csv: list, workings, remedy, out } = options;
      const on = paperAndDay(options);
      if (!on) return 2;
      if (json && list) {
        console.error("--json and --csv: write one of them.");
        return 2;
      }
      const assessment = assess(job);
      const order = orderFor(job, assessment, remedy === undefined ? {} : { remedy });
      if (isUnable(order)) {
        if (json) console.log(JSON.stringify(order, null, 2));
        else console.error(`No order: ${order.reason}`);
        return 3;
      }
      if (list) process.stdout.write(orderCsv(order));
      else
        console.log(
          json ? JSON.stringify(order, null, 2) : orderLines(order, workings ? "unfolded" : "folded").join("\n"),
        );
      if (out === undefined) return 0;
      const files = { out, jobFile: path, ...on };
      const written = await writeSheets([readyMixSheet], job, assessment, files, teller(json || list));
      return written === "some" ? 0 : 3;
    }),
  );
};
