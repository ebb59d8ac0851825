import { judgeLiftsSteps, liftsOf } from "@floorworthy/assess/catalogue";
import { adviseHit, readHit } from "@floorworthy/assess/hit";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { orderFor } from "@floorworthy/assess/order";
import { cheapestPad, checkHabit, depthRows, habitDesign, type PadAnswer } from "@floorworthy/assess/pad";
import { setOut } from "@floorworthy/assess/setout";
import { shimPlan } from "@floorworthy/assess/shims";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import {
  isVehicleClass,
  judgeVehicle,
  plainVehicle,
  vehicleClasses,
  vehicleOfClass,
} from "@floorworthy/assess/vehicle";
import { isUnable, readQuantity, unable } from "@floorworthy/engine/quantities";
import { type Job, readLift, type Vehicle } from "@floorworthy/job";
import { setZones } from "@floorworthy/job/editing";
import { sheets } from "@floorworthy/papers";
import { drawingToSvg } from "@floorworthy/papers/svg";
import type { Units } from "./messages.ts";
import type { Tell } from "./tell.ts";
import { assessed, withJob } from "./with-job.ts";

/** The job inside an answer would repeat the question. */
const bare = ({ job: _, ...answer }: PadAnswer) => answer;

/** The cheapest pad with its runners-up, the trade's habit beside it, what two inches buy, and the file with the pad in it. */
export const padPlan = (tell: Tell, text: string, units: Units) =>
  withJob(text, units, (job) => {
    const cheapest = cheapestPad(job, { tell });
    if (isUnable(cheapest)) return cheapest;
    const habit = checkHabit(job);
    const depths = depthRows(job, habitDesign(job));
    return {
      best: bare(cheapest.best),
      others: cheapest.others.map(bare),
      leftOut: cheapest.leftOut,
      habit: isUnable(habit) ? undefined : bare(habit),
      depths: isUnable(depths) ? [] : depths,
      written: setZones(text, cheapest.best.job),
    };
  });

/** What is poured, ordered and sawn. */
export const pourPlan = (text: string, units: Units) =>
  withJob(text, units, (job) => {
    const assessment = assessed(job);
    const joints = planJobJoints(job, assessment);
    const order = orderFor(job, assessment, isUnable(joints) ? {} : { joints });
    if (isUnable(joints) && isUnable(order)) return order;
    return {
      joints: isUnable(joints) ? undefined : joints,
      order: isUnable(order) ? undefined : order,
      why: isUnable(order) ? order.reason : isUnable(joints) ? joints.reason : "",
    };
  });

/** Everything to mark, drill, set and torque. */
export const setOutPlan = (text: string, units: Units) =>
  withJob(text, units, (job) => {
    const marks = setOut(job, assessed(job));
    return {
      marks: isUnable(marks) ? undefined : marks,
      why: isUnable(marks) ? marks.reason : "",
      shims: shimPlan(job),
    };
  });

export interface TypedHit {
  readonly hole: string;
  readonly depth: string;
  readonly met: string;
  readonly owner?: string;
}

/** What to do where the drill met something. */
export const hitPlan = (text: string, units: Units, typed: TypedHit) =>
  withJob(text, units, (job) => {
    const hit = readHit(job, typed);
    if ("hole" in hit) return adviseHit(job, hit);
    return unable("hit", hit.map(({ message }) => message).join(" "));
  });

/** What the years say, and the trend as a drawing. */
export const yearsPlan = (text: string, units: Units, today: string) =>
  withJob(text, units, (job) => {
    const trend = sheets.find(({ name }) => name === "torque-trend");
    const drawn =
      job.visits.length > 0 && trend ? trend.draw(job, assessed(job), { date: today, paper: "letter" }) : undefined;
    return {
      upkeep: upkeepOf(job, today),
      trend: drawn === undefined || isUnable(drawn) ? undefined : drawingToSvg(drawn[0]!),
      classes: Object.entries(vehicleClasses).map(([key, { words }]) => ({ key, words })),
      vehicles: job.vehicles.map(({ name }) => name),
    };
  });

/** May this vehicle go up today: one of the job's, or one of a class with its weight typed over. */
export const vehiclePlan = (text: string, units: Units, today: string, name: string, weight: string) =>
  withJob(text, units, (job) => {
    const vehicle = vehicleNamed(job, name);
    if (weight.trim() === "") return judgeVehicle(job, vehicle, today);
    const read = readQuantity(weight, "force");
    if (!read.ok) return unable("vehicle", `${read.message} ${read.hint}`);
    const { value } = read;
    const known = { known: true, value, low: value, high: value, basis: { kind: "stated" }, written: weight } as const;
    return judgeVehicle(job, { ...vehicle, weight: known, ...sharedOut(vehicle, value) }, today);
  });

const vehicleNamed = (job: Job, name: string): Vehicle =>
  job.vehicles.find((vehicle) => vehicle.name === name) ??
  (isVehicleClass(name) ? vehicleOfClass(name) : plainVehicle(name));

/** Axle weights of another weight no longer hold; their share does. */
const sharedOut = ({ weight, frontAxle }: Vehicle, value: number) => {
  if (!weight.known || !frontAxle.known || weight.value === 0) return {};
  const front = frontAxle.value / weight.value;
  const share = (part: number) =>
    ({
      known: true,
      value: part * value,
      low: part * value,
      high: part * value,
      basis: frontAxle.basis,
      written: "",
    }) as const;
  return { frontAxle: share(front), rearAxle: share(1 - front) };
};

/** Every lift of the catalogue against this floor. */
export const liftsPlan = (tell: Tell, text: string, units: Units, sheets: readonly string[]) =>
  withJob(text, units, (job) => {
    const lifts = sheets.flatMap((sheet) => {
      const read = readLift(sheet);
      return read.ok ? [read.lift] : [];
    });
    const steps = judgeLiftsSteps(job, liftsOf(job, lifts));
    let step = steps.next();
    while (!step.done) {
      tell(step.value.done, step.value.of);
      step = steps.next("go-on");
    }
    return step.value;
  });
