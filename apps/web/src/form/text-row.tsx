import { setFact, setPlain } from "@floorworthy/job/editing";
import { mistakesAt, useForm } from "./form-context.ts";
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
  const { tree, change, mistakes, hand } = useForm();
  const text = factText(reach(tree, path));
  const said = mistakesAt(mistakes, path);
  return (
    <Row id={path} label={label} doc={doc} wrong={said !== ""} said={said}>
      <input
        id={path}
        type={type}
        value={text === "unknown" ? "" : text}
        autoComplete="off"
        readOnly={hand === "only-looks"}
        aria-invalid={said !== ""}
        aria-describedby={`${path}-said`}
        onChange={({ target }) =>
          change(`type ${path}`, (file) =>
            target.value === "" ? setPlain(file, path, undefined) : setFact(file, path, target.value),
          )
        }
      />
    </Row>
  );
};
