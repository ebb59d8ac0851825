import type { AnyField } from "@floorworthy/job/fields";
import { useState } from "react";
import { useForm } from "./form-context.ts";
import { FormField, FormGroup } from "./form-field.tsx";
import { labelOf } from "./label-of.ts";
import { reach } from "./reach.ts";
import { writtenIn } from "./written-in.ts";

/** Some facts of a group that belong together, under a heading of their own. */
export interface FormSection {
  readonly title: string;
  /** what it is for, in a few words */
  readonly says: string;
  readonly keys: readonly string[];
  readonly fold: "open" | "folded";
}

/** A large group in sections, in the order of the work. Facts that no section names come last, so that none is lost. */
export const FormSections = (props: {
  readonly path: string;
  readonly fields: Readonly<Record<string, AnyField>>;
  readonly sections: readonly FormSection[];
}) => {
  const { path, fields, sections } = props;
  const named = new Set(sections.flatMap(({ keys }) => keys));
  const rest = Object.keys(fields).filter((key) => !named.has(key));
  const all: readonly FormSection[] =
    rest.length > 0 ? [...sections, { title: "What else is known", says: "", keys: rest, fold: "folded" }] : sections;
  return (
    <>
      {all.map((section) => (
        <Section key={section.title} section={section} path={path} fields={fields} />
      ))}
    </>
  );
};

const Section = (props: {
  readonly section: FormSection;
  readonly path: string;
  readonly fields: Readonly<Record<string, AnyField>>;
}) => {
  const { section, path, fields } = props;
  const { tree } = useForm();
  const [opened, setOpened] = useState<"open" | "folded">(section.fold);
  const keys = section.keys.filter((key) => fields[key]);
  const at = (key: string) => (path === "" ? key : `${path}.${key}`);
  const written = keys.reduce((sum, key) => sum + writtenIn(reach(tree, at(key))), 0);
  const [only] = keys;
  const alone = keys.length === 1 && only !== undefined ? fields[only] : undefined;
  return (
    <details
      className="section"
      open={section.fold === "open"}
      onToggle={({ currentTarget }) => setOpened(currentTarget.open ? "open" : "folded")}
    >
      <summary>
        <span className="section-title">{section.title}</span> <span className="row-doc">{section.says}</span>
        <span className="section-count">{written === 0 ? "nothing yet" : `${written} written`}</span>
      </summary>
      {opened === "open" &&
        (alone && only !== undefined && alone.shape.kind === "group" ? (
          <FormField path={at(only)} name={labelOf(only)} field={alone} depth={1} />
        ) : (
          <FormGroup path={path} fields={fields} depth={1} only={keys} />
        ))}
    </details>
  );
};
