import { setFact, setPlain } from "@floorworthy/job/editing";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { factText, reach } from "./reach.ts";
import { Row } from "./row.tsx";

/** One word out of a list; not known is among them. */
export const ChoiceRow = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly words: Readonly<Record<string, string>>;
}) => {
  const { path, label, doc, words } = props;
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const id = fieldId(form, path);
  const text = factText(reach(tree, path));
  const said = mistakesAt(mistakes, path);
  const chosen = text in words ? text : "";
  return (
    <Row id={id} label={label} doc={doc} wrong={said !== ""} said={said}>
      <select
        id={id}
        value={chosen}
        disabled={hand === "only-looks"}
        aria-invalid={said !== ""}
        aria-describedby={`${id}-said`}
        onChange={({ target }) =>
          change("", (file) =>
            target.value === "" ? setPlain(file, path, undefined) : setFact(file, path, target.value),
          )
        }
      >
        <option value="">not known</option>
        {Object.entries(words).map(([word, means]) => (
          <option key={word} value={word}>
            {means}
          </option>
        ))}
      </select>
    </Row>
  );
};
