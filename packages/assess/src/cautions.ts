import type { Job } from "@floorworthy/job";
import { anchoring } from "./facts/anchoring.ts";

/** The usual cautions of the trade. Silica: 29 CFR 1926.1153. The rest: common practice, no source. */
export const cautionsFor = (job: Job): string[] => [
  "This compares a floor with what the lift's maker asks and adds advice from published mechanics. It is not an engineer's design and approves nothing. The maker's manual, local codes and licensed practice come first.",
  ...(job.setting.permit.known && job.setting.permit.value === "granted"
    ? ["The permit's conditions and inspections bind; nothing here takes their place or changes them."]
    : []),
  "Before drilling or cutting: call the utility locating service, and have tubes, tendons and private lines located.",
  "Concrete dust harms the lungs: shroud and vacuum at the drill, water at the saw, never dry sweeping or open-air blowing of holes.",
  ...(anchoring(job.lift) === "anchored" ? withAnchors(job) : withoutAnchors),
];

const withAnchors = ({ lift }: Job): string[] => [
  "Columns are unstable until anchored" +
    (lift.top.known && lift.top.value === "overhead-tied" ? " and tied at the top" : "") +
    ": hoist, two people, nobody under them.",
  "Never load a lift with an anchor missing, spinning or set short. First load: a foot high, shake, look at every base.",
];

const withoutAnchors = [
  "What stands loose can tip: move it empty and low, nobody beside a fall, all of it set up as its manual shows before a load.",
  "Each load: a foot high, shake, look at every foot and the concrete round it, then up.",
];
