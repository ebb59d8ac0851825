import type { Dimension } from "@floorworthy/engine/quantities";
import { setFact, setPlain } from "@floorworthy/job/editing";
import { understoodAs } from "../quantities/understood.ts";
import { BasisPicker } from "./basis-picker.tsx";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { factText, reach } from "./reach.ts";
import { Row } from "./row.tsx";

/** A length, a load, a strength: typed as a person writes it, read back at once. */
export const QuantityRow = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly dimension: Dimension;
  readonly basis: "shown" | "hidden";
}) => {
  const { path, label, doc, dimension } = props;
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const id = fieldId(form, path);
  const there = reach(tree, path);
  const text = factText(there);
  const sense = understoodAs(text, dimension);
  const said = mistakesAt(mistakes, path);
  const wrong = said !== "" || "mistake" in sense;
  const write = (written: string) =>
    change(`type ${path}`, (file) =>
      written.trim() === "" && typeof there === "string"
        ? setPlain(file, path, undefined)
        : setFact(file, path, written),
    );
  return (
    <Row id={id} label={label} doc={doc} wrong={wrong} said={said || ("mistake" in sense ? sense.mistake : sense.read)}>
      <input
        id={id}
        value={text === "unknown" ? "" : text}
        placeholder="not known"
        autoComplete="off"
        spellCheck={false}
        readOnly={hand === "only-looks"}
        aria-invalid={wrong}
        aria-describedby={`${id}-said`}
        onChange={({ target }) => write(target.value)}
      />
      {props.basis === "shown" && text !== "" && text !== "unknown" && <BasisPicker path={path} label={label} />}
    </Row>
  );
};
