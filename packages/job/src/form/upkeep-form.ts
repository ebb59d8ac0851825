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
import type { BaseCorner, HoleRecord, Installation, Visit } from "../job.ts";

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
  turned: quantity("angle", "how far the nut turned from snug to its torque", { sign: "not-negative" }),
});

const level = group<Installation["levels"][number]>("a level", "the level at a corner of a base", {
  base: required(word({ left: "left", right: "right" }, "which base", "left")),
  corner: required(
    word(
      {
        "back-left": "toward the back wall, left",
        "back-right": "toward the back wall, right",
        "front-left": "toward the door, left",
        "front-right": "toward the door, right",
      },
      "which corner",
      undefined,
    ),
  ) as Field<BaseCorner>,
  level: quantity("length", "height of the floor over one mark common to both bases", { sign: "any" }),
});

export const installationForm = optionalGroup(
  group<Installation>(
    "the installation",
    "what was done when the lift was set",
    {
      date: date("the day"),
      installer: text("who set it", 200),
      qualification: text("training or licence of the installer", 200),
      serial: text("serial number on the lift's data plate", 100),
      label: text("number of the lift's certification label", 100),
      lot: text("anchor product and lot", 200),
      wrench: text("which torque wrench, and when it was checked", 200),
      trial: choice(
        { empty: "run up and down empty", "empty-and-loaded": "run empty, then loaded", "not-done": "not yet" },
        "trial run before handing over",
      ),
      instructed: choice({ yes: "shown and told", no: "not yet" }, "was the owner instructed"),
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
  state: choice(
    {
      holds: "it takes its torque",
      spins: "the bolt or nut turns without taking torque",
      snapped: "the bolt is broken",
      missing: "there is no anchor or no nut",
    },
    "does the anchor hold",
  ),
  sound: choice(
    { solid: "solid all around", hollow: "hollow near the anchor" },
    "how the concrete around it sounds under a hammer",
  ),
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
