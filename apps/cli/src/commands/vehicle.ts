import { judgeVehicle, vehicleClasses } from "@floorworthy/assess/vehicle";
import type { Command } from "commander";
import { dayOf } from "../day-option.ts";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { vehicleLines } from "../print/vehicle.ts";
import { type VehicleOptions, vehiclesOf } from "../vehicle-option.ts";

interface Options extends VehicleOptions {
  readonly today?: string;
  readonly workings?: boolean;
  readonly json?: boolean;
}

export const vehicleCommand = (program: Command): void => {
  jobCommand(program, "vehicle", "may this vehicle go up on this lift today; without options, every vehicle of the job")
    .option("--weight <weight>", 'as it will be lifted, such as "8200 lb"')
    .option("--name <name>", "a vehicle of the job, or what to call this one")
    .option("--preset <class>", `figures typical of a class, invented: ${Object.keys(vehicleClasses).join(", ")}`)
    .option("--front-axle <weight>", "weight on the front axle")
    .option("--rear-axle <weight>", "weight on the rear axle")
    .option("--wheelbase <length>", "between the axles")
    .option("--pickups <length>", "between front and rear lifting points")
    .option("--offset <length>", "centre of gravity from the line of the columns, toward the door")
    .option("--frame <kind>", "unibody (lifted at the sills) or body-on-frame (at the rails)")
    .option("--today <date>", "the day to judge on, YYYY-MM-DD (today unless given)")
    .option("--workings", "unfold every number")
    .option("--json", "print the answers as JSON")
    .action(
      withJob((job, options: Options): ExitCode => {
        const today = dayOf("--today", options.today);
        if (!today) return 2;
        const vehicles = vehiclesOf(job, options);
        if ("mistakes" in vehicles) {
          for (const mistake of vehicles.mistakes) console.error(mistake);
          return 2;
        }
        const results = vehicles.map((vehicle) => judgeVehicle(job, vehicle, today));
        console.log(
          options.json
            ? JSON.stringify(results, null, 2)
            : results
                .map((answer) => vehicleLines(answer, job.units, options.workings ? "unfolded" : "folded").join("\n"))
                .join("\n\n"),
        );
        return results.every(({ answer }) => answer === "yes") ? 0 : 3;
      }),
    );
};
