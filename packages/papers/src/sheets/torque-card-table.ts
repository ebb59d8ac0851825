import {
  type AnchorHistory,
  degrees,
  nextLimits,
  printMovement,
  printTorque,
  type Upkeep,
} from "@floorworthy/assess/upkeep";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { type Column, setTable } from "./table.ts";

const columns: readonly Column[] = [
  { heading: "No.", share: 7, align: "middle" },
  { heading: "Anchor", share: 11 },
  { heading: "Set to", share: 15, align: "end" },
  { heading: "Last found", share: 15, align: "end" },
  { heading: "Last turned", share: 13, align: "end" },
  { heading: "Take-up so far", share: 15, align: "end" },
  { heading: "Rings above", share: 13, align: "end" },
  { heading: "FOUND", share: 20 },
  { heading: "TURNED, deg", share: 20 },
  { heading: "STUD above plate", share: 21 },
  { heading: "Spins", share: 10, align: "middle" },
  { heading: "Hollow", share: 11, align: "middle" },
];

const BOX = "□";

/** What was found last, and fields for what is found today, in the order of the nuts. */
export const roundTable = (
  job: Job,
  upkeep: Upkeep,
  order: readonly string[],
  marks: ReadonlyMap<string, string>,
  date: string,
  box: Rect,
) => {
  const limits = nextLimits(job, date);
  const rowHeight = order.length <= 12 ? 7.2 : order.length <= 20 ? 5.6 : 4.6;
  return setTable(
    {
      tag: "note-table",
      columns,
      size: 2.1,
      rowHeight,
      rows: order.map((name, i) =>
        rowOf(
          job,
          upkeep.anchors.find(({ anchor }) => anchor === name),
          marks.get(name) ?? name,
          i,
          limits.get(name),
        ),
      ),
    },
    box,
  );
};

const rowOf = (
  job: Job,
  history: AnchorHistory | undefined,
  name: string,
  i: number,
  limit: number | undefined,
): string[] => {
  const found = history?.rounds.findLast((round) => round.found !== undefined)?.found;
  const turned = history?.rounds.findLast((round) => round.turned !== undefined)?.turned;
  const setTo = history?.setTo ?? (job.lift.anchors.torque.known ? job.lift.anchors.torque.value : undefined);
  const torque = (value: number | undefined) => (value === undefined ? "—" : printTorque(value, job.units));
  return [
    String(i + 1),
    name,
    torque(setTo),
    torque(found),
    turned === undefined ? "—" : `${degrees(turned)} deg`,
    history?.takeUp === undefined ? "—" : printMovement(history.takeUp, job.units),
    limit === undefined ? "—" : `${degrees(limit)} deg`,
    "",
    "",
    "",
    BOX,
    BOX,
  ];
};
