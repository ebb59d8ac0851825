import { useMemo } from "react";
import { FormProvider, useForm } from "../../form/form-context.ts";
import { FormField } from "../../form/form-field.tsx";
import type { OpenDocument } from "../../job/use-document.ts";
import { fieldAt } from "./field-at.ts";
import type { Thing } from "./things.ts";

/** What was chosen on the plan, to the sixteenth of an inch: typed rather than dragged. */
export const ChosenThing = (props: {
  readonly open: OpenDocument;
  readonly thing: Thing | undefined;
  readonly onTurn: (angle: number) => void;
  readonly onRemove: (path: string) => void;
}) => {
  const { thing, onTurn, onRemove } = props;
  const form = useForm();
  const own = useMemo(() => ({ ...form, prefix: "chosen-" }), [form]);
  if (!thing) return null;
  const path = thing.kind === "bay" ? "bay.outline" : thing.path;
  const field = fieldAt(path);
  return (
    <section className="chosen-thing" aria-label={`Chosen: ${thing.label}`}>
      <header>
        <h3>
          {thing.label} <span className="quiet">{thing.label.includes(thing.kind) ? "" : thing.kind}</span>
        </h3>
        {form.hand === "writes" && thing.kind === "lift" && (
          <span className="steps">
            <button type="button" onClick={() => onTurn(Math.PI / 2)}>
              Quarter turn
            </button>
            <button type="button" onClick={() => onTurn(Math.PI)}>
              Turn about
            </button>
          </span>
        )}
        {form.hand === "writes" && thing.path.endsWith("]") && (
          <button type="button" onClick={() => onRemove(thing.path)}>
            Take away
          </button>
        )}
      </header>
      <FormProvider value={own}>
        {field && (
          <FormField path={path} name={thing.kind === "bay" ? "outline" : thing.label} field={field} depth={2} />
        )}
      </FormProvider>
    </section>
  );
};
