import { setFact, setPlain } from "@floorworthy/job/editing";
import { understoodAs } from "../quantities/understood.ts";
import { fieldId, mistakesAt, useForm } from "./form-context.ts";
import { PointRow } from "./point-row.tsx";
import { factText, isGroup, isList, reach } from "./reach.ts";

const keys = ["width", "depth"] as const;

/** An outline: a rectangle by its width and depth, or corners. */
export const OutlineRow = ({ path, label, doc }: { path: string; label: string; doc: string }) => {
  const form = useForm();
  const { tree, change, mistakes, hand } = form;
  const there = reach(tree, path);
  const whole = mistakesAt(mistakes, path);
  if (isList(there))
    return (
      <div className="list">
        <p className="list-head">
          <b>{label}</b> <span className="row-doc">{doc}</span>
        </p>
        {there.map((_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the row
          <PointRow key={i} path={`${path}[${i}]`} label={`corner ${i + 1}`} doc="" axes={["x", "y"]} />
        ))}
        {whole !== "" && <p className="row-said">{whole}</p>}
      </div>
    );
  return (
    <>
      <fieldset className="row point" data-wrong={whole !== "" || undefined}>
        <legend>
          {label}
          <span className="row-doc">{doc}</span>
        </legend>
        {keys.map((key) => {
          const own = `${path}.${key}`;
          const id = fieldId(form, own);
          const text = isGroup(there) ? factText(there[key]) : "";
          const sense = understoodAs(text, "length");
          const said = mistakesAt(mistakes, own) || ("mistake" in sense ? sense.mistake : "");
          return (
            <div key={key} className="point-axis" data-wrong={said !== "" || undefined}>
              <label htmlFor={id}>{key}</label>
              <input
                id={id}
                value={text}
                autoComplete="off"
                spellCheck={false}
                readOnly={hand === "only-looks"}
                aria-invalid={said !== ""}
                aria-describedby={`${id}-said`}
                onChange={({ target }) =>
                  change(`type ${own}`, (file) =>
                    isGroup(there)
                      ? setFact(file, own, target.value)
                      : setPlain(file, path, { width: "20 ft", depth: "20 ft", [key]: target.value }),
                  )
                }
              />
              <p id={`${id}-said`} className="row-said">
                {said || ("read" in sense && text !== "" ? sense.read : "")}
              </p>
            </div>
          );
        })}
        {whole !== "" && <p className="row-said">{whole}</p>}
      </fieldset>
      {isGroup(there) && there.corner !== undefined && (
        <PointRow path={`${path}.corner`} label={`${label}, its corner`} doc="" axes={["x", "y"]} />
      )}
      {isGroup(there) && there.centre !== undefined && (
        <PointRow path={`${path}.centre`} label={`${label}, its centre`} doc="" axes={["x", "y"]} />
      )}
    </>
  );
};
