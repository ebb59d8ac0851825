import { setFact, setPlain } from "@floorworthy/job/editing";
import { understoodAs } from "../quantities/understood.ts";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { factText, isGroup, isList, reach } from "./reach.ts";

const from: Readonly<Record<string, string>> = {
  x: "from the left wall",
  y: "from the back wall",
  u: "inward",
  v: "toward the door",
};

/** A place as two lengths. */
export const PointRow = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly axes: readonly [string, string];
}) => {
  const { path, label, axes } = props;
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const there = reach(tree, path);
  const keyed = isGroup(there);
  const pathOf = (i: number) => (keyed ? `${path}.${axes[i]}` : `${path}[${i}]`);
  const textOf = (i: number) => factText(isList(there) ? there[i] : isGroup(there) ? there[axes[i]!] : undefined);
  const write = (i: number, written: string) =>
    change(`type ${path} ${i}`, (file) => {
      if (there !== undefined && textOf(1 - i) !== "") return setFact(file, pathOf(i), written);
      const both = [0, 1].map((k) => (k === i ? written : textOf(k)) || "0 in");
      return setPlain(file, path, both);
    });
  const whole = mistakesAt(mistakes, path);
  return (
    <fieldset className="row point" data-wrong={whole !== "" || undefined}>
      <legend>
        {label}
        <span className="row-doc">{props.doc}</span>
      </legend>
      {axes.map((axis, i) => {
        const id = fieldId(form, `${path}-${axis}`);
        const text = textOf(i);
        const sense = understoodAs(text, "length");
        const said = mistakesAt(mistakes, pathOf(i)) || ("mistake" in sense ? sense.mistake : "");
        return (
          <div key={axis} className="point-axis" data-wrong={said !== "" || undefined}>
            <label htmlFor={id}>{from[axis] ?? axis}</label>
            <input
              id={id}
              value={text}
              autoComplete="off"
              spellCheck={false}
              readOnly={hand === "only-looks"}
              aria-invalid={said !== ""}
              aria-describedby={`${id}-said`}
              onChange={({ target }) => write(i, target.value)}
            />
            <p id={`${id}-said`} className="row-said">
              {said || ("read" in sense && text !== "" ? sense.read : "")}
            </p>
          </div>
        );
      })}
      {whole !== "" && <p className="row-said">{whole}</p>}
    </fieldset>
  );
};
