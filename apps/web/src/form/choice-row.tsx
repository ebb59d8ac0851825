import { setFact, setPlain } from "@floorworthy/job/editing";
import { mistakesAt, useForm } from "./form-context.ts";
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
  const { tree, change, mistakes, hand } = useForm();
  const text = factText(reach(tree, path));
  const said = mistakesAt(mistakes, path);
  const chosen = text in words ? text : "";
  return (
    <Row id={path} label={label} doc={doc} wrong={said !== ""} said={said}>
      <select
        id={path}
        value={chosen}
        disabled={hand === "only-looks"}
        aria-invalid={said !== ""}
        aria-describedby={`${path}-said`}
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
