import type { Job } from "@floorworthy/job";
import type { Layout } from "../assessment.ts";
import { layoutOf } from "../layout.ts";
import { jobAt } from "./job-at.ts";
import type { Place } from "./placing.ts";

/** The plan of the bay with the lift at another place. */
export const layoutAt = (job: Job, place: Pick<Place, "position">): Layout => layoutOf(jobAt(job, place));
