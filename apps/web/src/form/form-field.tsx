import type { AnyField } from "@floorworthy/job/fields";
import { ChoiceRow } from "./choice-row.tsx";
import { FormGroup } from "./form-group.tsx";
import { labelOf } from "./label-of.ts";
import { ListPart } from "./list-part.tsx";
import { OutlineRow } from "./outline-row.tsx";
import { PointRow } from "./point-row.tsx";
import { QuantityRow } from "./quantity-row.tsx";
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
      const group = shape.of[0];
      return group?.shape.kind === "group" && !("width" in group.shape.fields) ? (
        <FormGroup path={path} fields={group.shape.fields} depth={depth} />
      ) : (
        <OutlineRow {...shared} />
      );
    }
    case "version":
      return null;
  }
};
