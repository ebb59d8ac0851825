import {
  choice,
  date,
  dateNeeded,
  type Field,
  group,
  list,
  optionalGroup,
  quantity,
  required,
  text,
  word,
} from "../fields/index.ts";
import type { HoleRecord, Installation, Visit } from "../job.ts";

const anchorName = required(text("which anchor, such as L1", 20)) as Field<string>;

const hole = group<HoleRecord>("a hole", "the record of one hole", {
  anchor: anchorName,
  depth: quantity("length", "its depth"),
  met: choice(
    {
      nothing: "nothing",
      bar: "a reinforcing bar",
      void: "a hollow",
      tube: "a tube",
      conduit: "a conduit",
      tendon: "a tendon",
    },
    "what the drill met",
  ),
  clean: choice({ yes: "brushed and blown", no: "not yet" }, "was it cleaned"),
  projection: quantity("length", "bolt above the plate"),
  torque: quantity("moment", "torque reached"),
});

const level = group<Installation["levels"][number]>("a level", "the level at a corner of a base", {
  base: required(word({ left: "left", right: "right" }, "which base", "left")),
  corner: required(text("which corner", 40)) as Field<string>,
  level: quantity("length", "its height over the lowest point", { sign: "any" }),
});

export const installationForm = optionalGroup(
  group<Installation>(
    "the installation",
    "what was done when the lift was set",
    {
      date: date("the day"),
      installer: text("who set it", 200),
      beam: choice({ fitted: "fitted and bolted", "not-fitted": "not fitted" }, "the overhead beam"),
      plumb: choice({ plumb: "both columns plumb", "not-plumb": "not plumb" }, "the columns"),
      holes: list("holes drilled", hole, { most: 80 }),
      levels: list("levels of the bases", level, { most: 40 }),
    },
    { basis: (_, outer) => (outer.kind === "stated" ? { kind: "measured" } : outer) },
  ),
);

const nut = group<Visit["readings"][number]>("a nut", "one nut that day", {
  anchor: anchorName,
  found: quantity("moment", "torque found", { sign: "not-negative" }),
  turned: quantity("angle", "how far the nut turned to its torque", { sign: "not-negative" }),
  projection: quantity("length", "bolt above the plate", { sign: "not-negative" }),
  note: text("anything seen"),
});

export const visitForm = group<Visit>(
  "a visit",
  "one round of the nuts",
  {
    date: dateNeeded("the day"),
    who: text("who came", 200),
    temperature: quantity("temperature", "temperature of the room", { sign: "any" }),
    wrench: text("which torque wrench", 200),
    readings: list("nut by nut", nut, { most: 80 }),
  },
  { basis: () => ({ kind: "measured" }) },
);
