import type { AnyField } from "@floorworthy/job/fields";
import { FormField } from "./form-field.tsx";
import { labelOf } from "./label-of.ts";

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
              {labelOf(key)} <span className="row-doc">{field.doc}</span>
            </summary>
            {inner}
          </details>,
        ];
      })}
    </div>
  );
};
