import { setPlain } from "@floorworthy/job/editing";
import { type ReactNode, useMemo } from "react";
import { FormProvider, useForm } from "../../form/form-context.ts";
import { FormField } from "../../form/form-field.tsx";
import { reach } from "../../form/reach.ts";
import { fieldAt } from "../../plan/hand/field-at.ts";
import { inTheMiddle } from "../../plan/hand/in-the-middle.ts";
import { readLength } from "../../plan/hand/tape.ts";
import type { Units } from "../../work/messages.ts";
import { bringIntoSight } from "../bring-into-sight.ts";
import { TakeLift, useLifts } from "../take-lift.tsx";
import type { OpenDocument } from "../use-document.ts";
import { stepsDone } from "./steps-done.ts";

/** What a new job needs before it can say anything: three short steps, gone when they are done. */
export const FirstSteps = ({ open, units }: { open: OpenDocument; units: Units }) => {
  const form = useForm();
  const own = useMemo(() => ({ ...form, prefix: "first-" }), [form]);
  const { tree, hand } = form;
  const done = stepsDone(tree);
  if (hand === "only-looks" || (done.lift && done.floor && done.place)) return null;
  return <Steps open={open} units={units} done={done} own={own} />;
};

const Steps = (props: {
  readonly open: OpenDocument;
  readonly units: Units;
  readonly done: ReturnType<typeof stepsDone>;
  readonly own: ReturnType<typeof useForm>;
}) => {
  const { open, units, done, own } = props;
  const { lifts } = useLifts();
  const spacing = readLength(reach(own.tree, "lift.spacing")) ?? 3200;
  const place = (text: string) => inTheMiddle(text, own.tree, spacing, units);
  const [thickness, outline] = [fieldAt("floor.thickness"), fieldAt("bay.outline")];
  return (
    <section className="first-steps" aria-labelledby="first-steps-title">
      <h2 id="first-steps-title">Three things make an answer</h2>
      <p className="quiet">
        Two minutes. Whatever nobody knows may stay open: the tool says what it would change, and what to find out
        first.
      </p>
      <FormProvider value={own}>
        <ol>
          <Step title="The lift's floor page" done={done.lift}>
            {lifts.length > 0 && <TakeLift id="first-take-lift" open={open} lifts={lifts} />}
            <p className="quiet">
              Not in the catalogue? <PartLink id={open.id} part="lift" words="Type it from its page." />
            </p>
          </Step>
          <Step title="How thick the floor is" done={done.floor}>
            {thickness && <FormField path="floor.thickness" name="thickness" field={thickness} depth={2} />}
            <p className="quiet">
              Drilled readings say more: <PartLink id={open.id} part="floor" words="write them under Floor." />{" "}
              {!done.floor && (
                <button
                  type="button"
                  onClick={() => own.change("", (text) => setPlain(text, "floor.thickness", "unknown"))}
                >
                  Nobody knows
                </button>
              )}
            </p>
          </Step>
          <Step title="Where the lift stands" done={done.place}>
            {outline && <FormField path="bay.outline" name="slab" field={outline} depth={2} />}
            <p>
              <button type="button" className="decide" onClick={() => own.change("", place)}>
                Stand it in the middle
              </button>{" "}
              <span className="quiet">Then drag it on the plan, or type it under Position.</span>
            </p>
          </Step>
        </ol>
      </FormProvider>
    </section>
  );
};

const PartLink = ({ id, part, words }: { id: string; part: "lift" | "floor"; words: string }) => (
  <a href={`#/jobs/${encodeURIComponent(id)}/${part}`} onClick={() => bringIntoSight(part)}>
    {words}
  </a>
);

const Step = (props: { readonly title: string; readonly done: boolean; readonly children: ReactNode }) => (
  <li data-state={props.done ? "done" : "open"}>
    <h3>
      {props.title} {props.done && <span className="quiet">is there</span>}
    </h3>
    {!props.done && props.children}
  </li>
);
