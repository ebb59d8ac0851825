import { choice, group, list, plainNumber, pointOrNone, quantity, required, word } from "../fields/index.ts";
import type { CoreTest, CylinderTest, StrengthEvidence } from "../floor.ts";

export const cylinderForm = group<CylinderTest>(
  "a cylinder test",
  "one cylinder test",
  {
    strength: quantity("stress", "its strength"),
    ageDays: required(plainNumber("time", "its age when broken", 0, "positive")),
    cured: word({ standard: "in the laboratory", field: "beside the slab" }, "where it was kept", "standard"),
  },
  { basis: (_, outer) => (outer.kind === "documented" ? outer : { kind: "documented", document: "cylinder report" }) },
);

const core = group<CoreTest>(
  "a core test",
  "one core",
  {
    strength: quantity("stress", "its strength as broken"),
    diameter: quantity("length", "its diameter"),
    length: quantity("length", "its length as broken"),
    moisture: choice(
      { "as-received": "kept as drilled", soaked: "kept in water", dry: "dried in air" },
      "how it was kept",
    ),
    at: pointOrNone("where it was taken"),
  },
  { basis: () => ({ kind: "measured", how: "core" }) },
);

export const strengthForm = group<StrengthEvidence>(
  "the evidence of strength",
  "all that is known of the concrete's strength",
  {
    specified: quantity("stress", "compressive strength ordered or specified", { usual: [6.8, 70] }),
    tickets: choice(
      { "in-hand": "the delivery tickets were kept", lost: "they were not" },
      "are the delivery tickets in hand",
    ),
    cylinders: list("cylinder tests", cylinderForm, { most: 100 }),
    cores: list("cores", core, { most: 100 }),
    rebound: list(
      "readings of a rebound hammer as strength; shown, never counted alone",
      required(quantity("stress", "one reading")),
      { most: 200 },
    ),
    tensileAsPrinted: quantity("stress", "a figure called tensile strength on some page: kept, explained, never used"),
  },
);
