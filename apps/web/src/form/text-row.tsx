import { setFact, setPlain } from "@floorworthy/job/editing";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { factText, reach } from "./reach.ts";
import { Row } from "./row.tsx";

/** Words, a price, or a day. */
export const TextRow = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly type: "text" | "date";
}) => {
  const { path, label, doc, type } = props;
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const id = fieldId(form, path);
  const text = factText(reach(tree, path));
  const said = mistakesAt(mistakes, path);
  return (
    <Row id={id} label={label} doc={doc} wrong={said !== ""} said={said}>
      <input
        id={id}
        type={type}
        value={text === "unknown" ? "" : text}
        autoComplete="off"
        readOnly={hand === "only-looks"}
        aria-invalid={said !== ""}
        aria-describedby={`${id}-said`}
        onChange={({ target }) =>
          change(`type ${path}`, (file) =>
            target.value === "" ? setPlain(file, path, undefined) : setFact(file, path, target.value),
          )
        }
      />
    </Row>
  );
};
