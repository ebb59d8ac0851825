import type { Job } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { placedBases } from "../layout.ts";
import { vehicleBox } from "./footprint.ts";
import type { Stand } from "./placing.ts";
import { practice } from "./practice.ts";
import { standWords, type WayIn } from "./stands.ts";

/** What was taken where nobody said, and what was not looked at. */
export const notesOf = (job: Job, ways: readonly { readonly stand: Stand; readonly wayIn: WayIn }[]): string[] => {
  const say = (mm: number): string => shown(mm, "length", job.units);
  const { vehicles, lift, bay, floor } = job;
  const vehicle = vehicleBox(vehicles);
  const unseen = ways.filter((way) => way.wayIn === "not-looked-at").map(({ stand }) => standWords[stand]);
  return [
    ...(vehicle
      ? [
          `The vehicle's centre of gravity is set on the column line; ${say(practice.bumper)} are kept between it and walls, benches and the closed door (common practice, no source).`,
        ]
      : ["No vehicle with a length is known: whether one fits behind the door was not looked at."]),
    ...(vehicle && vehicles.every(({ width }) => !width.known)
      ? [`The vehicle is taken as ${say(practice.vehicleWidth)} wide.`]
      : []),
    ...(vehicles.some(({ length, noseToCentre }) => length.known && !noseToCentre.known)
      ? [
          "A centre of gravity nobody gave is taken at 40 to 50 % of the vehicle's length behind its nose, whichever needs more room.",
        ]
      : []),
    ...(vehicle && unseen.length > 0
      ? [
          `No door in line with the lift is on the plan (${unseen.join("; ")}): whether the vehicle gets in was not looked at.`,
        ]
      : []),
    ...(lift.asks.wall.known
      ? []
      : [`Base plates are kept ${say(practice.plateToWall)} off walls (common practice, no source).`]),
    ...(!lift.asks.edge.known ? ["The maker's edge distance is not known: edges were not counted."] : []),
    ...(floor.bars.length > 0
      ? ["Bars lie at known spacing but nobody knows where: locate them before drilling."]
      : []),
    ...(floor.zones.some(({ state, kind }) => state === "proposed" && kind !== "footing")
      ? ["Pads still to be poured move with the lift."]
      : []),
    ...(onPads(job) ? ["It was wanted on concrete poured for it: places outside that stand on the slab alone."] : []),
    ...(bay.walls.length === 0 ? ["No walls are on the plan: every edge of the floor counts as one."] : []),
  ];
};

const onPads = (job: Job): boolean =>
  placedBases(job).some((base) => {
    const zone = zoneUnder(job, base);
    return zone?.state === "standing" && (zone.kind === "pad" || zone.kind === "strip");
  });
