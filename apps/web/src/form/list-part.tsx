import { addToList, setPlain } from "@floorworthy/job/editing";
import type { AnyField } from "@floorworthy/job/fields";
import { firstEntry } from "./first-entry.ts";
import { useForm } from "./form-context.ts";
import { FormField } from "./form-field.tsx";
import { factText, isList, reach, under } from "./reach.ts";

/** Entries one below the other; each can be taken away, and another added. */
export const ListPart = (props: {
  readonly path: string;
  readonly label: string;
  readonly doc: string;
  readonly item: AnyField;
  readonly depth: number;
}) => {
  const { path, label, doc, item, depth } = props;
  const { tree, change, hand } = useForm();
  const there = reach(tree, path);
  const entries = isList(there) ? there : [];
  return (
    <div className="list" id={`${path}-list`}>
      <p className="list-head">
        <b>{label}</b> <span className="row-doc">{doc}</span>
      </p>
      {entries.map((entry, i) => {
        const own = `${path}[${i}]`;
        const named =
          ["name", "id", "anchor", "date", "on", "near"].map((key) => factText(under(entry, key))).find(Boolean) ??
          `${i + 1}`;
        return (
          <details key={own} className="entry" open={entries.length <= 2 && depth < 2}>
            <summary>
              {named} <span className="quiet">{summaryOf(entry)}</span>
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
