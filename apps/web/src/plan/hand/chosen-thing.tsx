import { setPlain } from "@floorworthy/job/editing";
import { useForm } from "../../form/form-context.ts";
import { FormField } from "../../form/form-field.tsx";
import type { OpenDocument } from "../../job/use-document.ts";
import { fieldAt } from "./field-at.ts";
import type { Thing } from "./things.ts";

/** What was chosen on the plan, to the sixteenth of an inch: typed rather than dragged. */
export const ChosenThing = (props: {
  readonly open: OpenDocument;
  readonly thing: Thing | undefined;
  readonly onTurn: (angle: number) => void;
}) => {
  const { open, thing, onTurn } = props;
  const { hand } = useForm();
  if (!thing)
    return (
      <p className="quiet">
        Press a thing to choose it; drag it, or move it with the arrow keys (with Shift by a larger step). Two fingers
        or the wheel look nearer.
      </p>
    );
  const path = thing.kind === "bay" ? "bay.outline" : thing.path;
  const field = fieldAt(path);
  return (
    <section className="chosen-thing" aria-label={thing.label}>
      <header>
        <h3>
          {thing.label} <span className="quiet">{thing.kind === thing.label ? "" : thing.kind}</span>
        </h3>
        {hand === "writes" && thing.kind === "lift" && (
          <span className="steps">
            <button type="button" onClick={() => onTurn(Math.PI / 2)}>
              Quarter turn
            </button>
            <button type="button" onClick={() => onTurn(Math.PI)}>
              Turn about
            </button>
          </span>
        )}
        {hand === "writes" && thing.path.endsWith("]") && (
          <button type="button" onClick={() => open.change("", (text) => setPlain(text, thing.path, undefined))}>
            Take away
          </button>
        )}
      </header>
      {field && <FormField path={path} name={thing.kind === "bay" ? "outline" : thing.label} field={field} depth={2} />}
    </section>
  );
};
