import { choice, group, list, quantity } from "../fields/index.ts";
import type { Choices, Setting } from "../job.ts";
import { liftOrReference } from "./lift-reference.ts";

export const settingForm = group<Setting>("the setting", "where and for whom", {
  use: choice({ home: "at home", shop: "at work", public: "where the public comes" }, "who uses the lift"),
  permit: choice(
    {
      "not-required": "the office asked needs none",
      required: "one is needed and not granted yet",
      granted: "granted, its conditions in hand",
    },
    "building permit",
  ),
  seismic: choice(
    { A: "least", B: "little", C: "some", D: "strong", E: "very strong", F: "very strong, vital building" },
    "seismic design category",
  ),
  weather: choice(
    { indoors: "indoors", "open-bay": "open on one side or more", outdoors: "outdoors" },
    "wind and weather",
  ),
  slopeNear: choice(
    { none: "level ground around", near: "hillside, retaining wall or fill close by" },
    "slopes near the slab",
  ),
  slabOwner: choice(
    {
      customer: "the customer",
      "landlord-consents": "a landlord, who agrees in writing",
      "landlord-not-asked": "a landlord, not asked yet",
    },
    "who owns the slab",
  ),
});

export const choicesForm = group<Choices>(
  "the choices",
  "what the judgement should reckon with; each has a default with its reason",
  {
    uneven: quantity("number", "share of the load on the heavier column"),
    dynamicFactor: quantity("number", "factor for shock on the lifted weight"),
    workForce: quantity("force", "sideways force of work on the vehicle", { sign: "not-negative" }),
    bedding: quantity("subgrade-modulus", "stiffness of the bedding between base plate and concrete"),
    firstCrackMargin: quantity("number", "least margin against the first crack of the slab"),
    lifts: list("other lifts to judge beside this one", liftOrReference, { most: 20 }),
  },
);
