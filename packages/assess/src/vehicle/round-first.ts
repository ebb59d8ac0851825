import type { Job, Vehicle } from "@floorworthy/job";
import { anchoring } from "../facts/anchoring.ts";
import { shown } from "../facts/print.ts";
import { heaviestBefore } from "../upkeep/round-due.ts";
import type { Upkeep } from "../upkeep/upkeep.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

/** Why a round of the nuts comes before this vehicle. */
export const roundFirst = (
  job: Job,
  vehicle: Vehicle,
  { weight }: VehicleFacts,
  { next, lastRound, answer, reasons }: Upkeep,
): string[] => {
  if (anchoring(job.lift) === "loose") return [];
  if (!job.installation && job.visits.length === 0)
    return ["There is no record that the lift is set and its nuts are at their torque."];
  if (answer === "no-readings" && !job.installation?.date)
    return ["No round of the nuts is written down, nor the day the lift was set."];
  const heaviest = lastRound
    ? heaviestBefore({ ...job, vehicles: job.vehicles.filter((v) => v !== vehicle) }, lastRound)
    : 0;
  const fresh = vehicle.since === undefined ? !job.vehicles.includes(vehicle) : vehicle.since > (lastRound ?? "");
  const heavier = lastRound !== undefined && fresh && heaviest > 0 && weight !== undefined && weight.high > heaviest;
  return [
    ...(next && next.standing !== "ahead" ? [`The round of ${next.date} is due: ${next.reason.words}.`] : []),
    ...(heavier
      ? [
          `It is heavier than anything lifted before the last round (${shown(heaviest, "force", job.units)}, ${lastRound}).`,
        ]
      : []),
    ...(answer === "retorque-and-look" ? reasons.filter((words) => !words.startsWith("The round of")) : []),
  ];
};
