import type { AnyField } from "@floorworthy/job/fields";
import { jobFields } from "@floorworthy/job/form";
import { type FormSection, FormSections } from "../../form/form-sections.tsx";

const fields = jobFields as unknown as Readonly<Record<string, AnyField>>;
const shape = jobFields.floor.shape;
const floorFields = (shape.kind === "group" ? shape.fields : {}) as Readonly<Record<string, AnyField>>;

const floorSections: readonly FormSection[] = [
  {
    title: "How thick",
    says: "a named thickness helps; drilled readings at the bases decide",
    keys: ["state", "thickness", "readings", "zones"],
    fold: "open",
  },
  {
    title: "What forbids drilling",
    says: "find this out before the first hole",
    keys: ["postTension", "heat", "utilities", "below", "kind", "movement"],
    fold: "open",
  },
  {
    title: "How strong, and how old",
    says: "tickets and cylinders, or cores",
    keys: ["strength", "poured", "ageDays", "reinforcement", "bars"],
    fold: "folded",
  },
  {
    title: "Lines in it",
    says: "joints, cracks and pipes; draw them on the plan or type them here",
    keys: ["joints", "cracks", "pipes"],
    fold: "folded",
  },
  {
    title: "Surface and ground",
    says: "what lies over the concrete, and under it",
    keys: ["layer", "surface", "slope", "ground"],
    fold: "folded",
  },
];

const jobSections: readonly FormSection[] = [
  {
    title: "The job",
    says: "whose floor, where, when, and what the place demands",
    keys: ["title", "customer", "place", "date", "setting"],
    fold: "folded",
  },
];

/** What is known of the floor, and how. */
export const FloorPart = () => (
  <>
    <FormSections path="floor" fields={floorFields} sections={floorSections} />
    <FormSections
      path=""
      fields={Object.fromEntries(jobSections[0]!.keys.map((key) => [key, fields[key]!]))}
      sections={jobSections}
    />
  </>
);
