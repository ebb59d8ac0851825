import type { AnyField } from "@floorworthy/job/fields";
import { liftSheetFields } from "@floorworthy/job/form";
import { type FormSection, FormSections } from "./form-sections.tsx";

const sections: readonly FormSection[] = [
  {
    title: "Which lift",
    says: "from its plate and the front of its manual",
    keys: ["name", "kind", "rated", "manual", "edition", "top", "fixing"],
    fold: "open",
  },
  {
    title: "What its floor page asks",
    says: "copy the page, line by line; what it does not say stays open",
    keys: ["asks"],
    fold: "open",
  },
  { title: "Anchors", says: "the bolts the page names, and their product sheet", keys: ["anchors"], fold: "folded" },
  {
    title: "Columns and base plates",
    says: "from the drawing in the manual",
    keys: ["spacing", "base", "columnWeight", "arms", "columnTurn", "columnInertia"],
    fold: "folded",
  },
  {
    title: "Heights and reach of the arms",
    says: "they make the moment at the base",
    keys: [
      "tieHeight",
      "pickupHeight",
      "fullHeight",
      "reachCar",
      "reachTruck",
      "padSpacing",
      "overallHeight",
      "overallWidth",
    ],
    fold: "folded",
  },
  {
    title: "The maker's own loads, posts and feet",
    says: "for lifts that are not two-post, and pages that print reactions",
    keys: ["reactions", "supports"],
    fold: "folded",
  },
];

const shape = liftSheetFields.lift.shape;
const fields = (shape.kind === "group" ? shape.fields : {}) as Readonly<Record<string, AnyField>>;

/** A lift's sheet in the order one reads its manual. */
export const LiftForm = ({ path }: { path: string }) => (
  <FormSections path={path} fields={fields} sections={sections} />
);
