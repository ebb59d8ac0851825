import { addToList, setPlain } from "@floorworthy/job/editing";
import type { AnyField } from "@floorworthy/job/fields";
import { ChoiceRow } from "./choice-row.tsx";
import { firstEntry } from "./first-entry.ts";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { labelOf } from "./label-of.ts";
import { OutlineRow } from "./outline-row.tsx";
import { PointRow } from "./point-row.tsx";
import { QuantityRow } from "./quantity-row.tsx";
import { factText, isList, reach, under } from "./reach.ts";
import { TextRow } from "./text-row.tsx";

/** The part of the page for one field of the job's form, whatever its shape: the declaration that reads the file draws it. */
export const FormField = ({
  path,
  name,
  field,
  depth,
}: {
  readonly path: string;
  readonly name: string;
  readonly field: AnyField;
  readonly depth: number;
}) => {
  const { shape, doc } = field;
  const { tree } = useForm();
  const shared = { path, label: labelOf(name), doc };
  switch (shape.kind) {
    case "quantity":
      return (
        <QuantityRow {...shared} dimension={shape.dimension} basis={shape.may === "be-unknown" ? "shown" : "hidden"} />
      );
    case "choice":
      return <ChoiceRow {...shared} words={shape.words} />;
    case "text":
    case "price":
      return <TextRow {...shared} type="text" />;
    case "date":
      return <TextRow {...shared} type="date" />;
    case "point":
      return <PointRow {...shared} axes={shape.axes} />;
    case "list":
      return <ListPart {...shared} item={shape.of} depth={depth} />;
    case "group":
      return <FormGroup path={path} fields={shape.fields} depth={depth} />;
    case "either": {
      const group = shape.of.find((each) => each.shape.kind === "group" && !("width" in each.shape.fields));
      const point = shape.of.find((each) => each.shape.kind === "point");
      if (group?.shape.kind !== "group") return <OutlineRow {...shared} />;
      return point?.shape.kind === "point" && isList(reach(tree, path)) ? (
        <PointRow {...shared} axes={point.shape.axes} />
      ) : (
        <FormGroup path={path} fields={group.shape.fields} depth={depth} />
      );
    }
    case "version":
      return null;
  }
};

/** Groups inside a group fold, so that a part of the job fits the eye. */
export const FormGroup = (props: {
  readonly path: string;
  readonly fields: Readonly<Record<string, AnyField>>;
  readonly depth: number;
  /** only these keys, in this order */
  readonly only?: readonly string[];
}) => {
  const { path, fields, depth } = props;
  const keys = props.only ?? Object.keys(fields);
  return (
    <div className="form">
      {keys.flatMap((key) => {
        const field = fields[key];
        if (!field) return [];
        const own = path === "" ? key : `${path}.${key}`;
        const inner = <FormField key={own} path={own} name={key} field={field} depth={depth + 1} />;
        if (field.shape.kind !== "group" || depth > 3) return [inner];
        return [
          <details key={own} className="group">
            <summary>
              <span className="group-name">{labelOf(key)}</span> <span className="row-doc">{field.doc}</span>
            </summary>
            {inner}
          </details>,
        ];
      })}
    </div>
  );
};

/** Entries one below the other; each can be taken away, and another added. */
const ListPart = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly item: AnyField;
  readonly depth: number;
}) => {
  const { path, label, doc, item, depth } = props;
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const there = reach(tree, path);
  const entries = isList(there) ? there : [];
  return (
    <div className="list" id={`${fieldId(form, path)}-list`}>
      <p className="list-head">
        <b>{label}</b> <span className="row-doc">{doc}</span>
      </p>
      {entries.map((entry, i) => {
        const own = `${path}[${i}]`;
        const named =
          ["name", "id", "anchor", "date", "on", "near"].map((key) => factText(under(entry, key))).find(Boolean) ??
          `${i + 1}`;
        const said = mistakesAt(mistakes, own);
        return (
          <details
            key={own}
            className="entry"
            data-wrong={said !== "" || undefined}
            open={summaryOf(entry) === "" && depth < 2}
          >
            <summary>
              {named} <span className="quiet">{summaryOf(entry)}</span> <span className="row-said">{said}</span>
            </summary>
            <FormField path={own} name={named} field={item} depth={depth + 1} />
            {hand === "writes" && (
              <button type="button" onClick={() => change("", (file) => setPlain(file, own, undefined))}>
                Take {named} away
              </button>
            )}
          </details>
        );
      })}
      {hand === "writes" && (
        <button
          type="button"
          className="add"
          onClick={() => change("", (file) => addToList(file, path, firstEntry(item, entries.length + 1)) ?? file)}
        >
          Add to {label}
        </button>
      )}
    </div>
  );
};

/** The first facts of an entry on one line. */
const summaryOf = (entry: ReturnType<typeof reach>): string =>
  ["kind", "thickness", "method", "end", "width", "weight", "depth", "torque", "found"]
    .map((key) => factText(under(entry, key)))
    .filter((text) => text !== "")
    .slice(0, 3)
    .join(", ");
