import { setPlain } from "@floorworthy/job/editing";
import { jobFields } from "@floorworthy/job/form";
import { useForm } from "../../form/form-context.ts";
import { FormField, FormGroup } from "../../form/form-field.tsx";
import { tapedPoint } from "../../plan/hand/tape.ts";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** Where the columns are wanted, where they may stand, and the bay around them. */
export const PositionPart = ({ open, units }: PartProps) => {
  const { hand } = useForm();
  const work = useWork("placing", [open.text, units]);
  const placing = work.value?.ok ? work.value.value : undefined;
  const proposed = placing?.answer === "move" ? placing.proposed : undefined;
  return (
    <>
      <WorkState work={work} what="Looking where the lift may stand" />
      {placing && (
        <section className="finding" aria-label="Where the lift may stand">
          <p className="finding-said">{placing.sentence}</p>
          {proposed && hand === "writes" && (
            <button
              type="button"
              className="decide"
              onClick={() =>
                open.change("", (text) =>
                  setPlain(
                    setPlain(text, "columns.left", [...tapedPoint(proposed.position.left, units)]),
                    "columns.right",
                    [...tapedPoint(proposed.position.right, units)],
                  ),
                )
              }
            >
              Move it: {proposed.words}
            </button>
          )}
          <ul>
            {placing.blockers.map(({ id, sentence }) => (
              <li key={id}>{sentence}</li>
            ))}
            {placing.ranges.map(({ axis, sentence }) => (
              <li key={axis}>{sentence}</li>
            ))}
            {placing.ways
              .flatMap(({ closed }) => closed)
              .map(({ sentence }) => (
                <li key={sentence}>{sentence}</li>
              ))}
            {placing.fits.map(({ id, sentence }) => (
              <li key={id}>{sentence}</li>
            ))}
          </ul>
          {placing.notes.map((note) => (
            <p key={note} className="quiet">
              {note}
            </p>
          ))}
        </section>
      )}
      <FormField path="columns" name="columns" field={jobFields.columns} depth={0} />
      <FormGroup path="" fields={fields} depth={0} only={["bay", "vehicles"]} />
    </>
  );
};
