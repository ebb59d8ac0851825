import { pointInPolygon } from "@floorworthy/engine/geometry";
import type { Job, Zone } from "@floorworthy/job";
import { ageOf } from "./age.ts";
import { newWorkCores } from "./cores-new-work.ts";
import { oldFloorCores } from "./cores-old-floor.ts";
import type { Evidence, TestedCore } from "./strength-finding.ts";

/** Cores of this very concrete: one taken in a pad says nothing of the slab, nor the other way round. */
export const coresUnder = ({ floor }: Job, zone: Zone | undefined): readonly TestedCore[] =>
  floor.strength.cores.flatMap((core) => {
    if (!core.strength.known) return [];
    const { at } = core;
    const own = (z: Zone): boolean => z.state === "standing" && (z.kind === "pad" || z.kind === "strip");
    const taken = at && floor.zones.findLast((z) => own(z) && pointInPolygon(at, z.outline) !== "outside");
    const under = zone && own(zone) ? zone : undefined;
    return taken === under ? [{ ...core, strength: core.strength }] : [];
  });

/** Concrete this young is new work, whose cores are compared with its order; common practice, no source. */
const NEW_WORK_DAYS = 365;

/** New work with a written order: the 85 and 75 %. Everything else: the equivalent strength of old concrete. */
export const fromCores = (job: Job, cores: readonly TestedCore[], otherwise: Evidence): Evidence => {
  const { specified } = job.floor.strength;
  const { days } = ageOf(job, []);
  const old = oldFloorCores(job, cores, otherwise);
  if (!specified.known || specified.basis.kind === "stated" || days === undefined || days > NEW_WORK_DAYS) return old;
  return newWorkCores(job, cores, specified.value, old);
};
