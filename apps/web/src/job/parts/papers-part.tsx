import { useState } from "react";
import { JobPhotographs } from "../../field/job-photographs.tsx";
import { JobFile } from "../../file/job-file.tsx";
import { useForm } from "../../form/form-context.ts";
import { OtherFiles } from "../../papers/other-files.tsx";
import { SheetPreview } from "../../papers/sheet-preview.tsx";
import { useWork } from "../../work/use-work.ts";
import { HistoryList } from "../history-list.tsx";
import type { PartProps } from "../part-props.ts";

const none = [] as const;

/** The papers that travel, and the job as a file. */
export const PapersPart = ({ open, answers, units }: PartProps) => {
  const { value: sheets } = useWork("listSheets", none as unknown as [], { pause: 0 });
  const { hand } = useForm();
  const [chosen, setChosen] = useState<string>();
  const [paper, setPaper] = useState<"letter" | "a4">(units === "si" ? "a4" : "letter");
  const sheet = sheets?.find(({ name }) => name === chosen);
  return (
    <>
      <div className="row">
        <label htmlFor="paper-size">Paper</label>
        <div className="row-hand">
          <select id="paper-size" value={paper} onChange={({ target }) => setPaper(target.value as typeof paper)}>
            <option value="letter">letter</option>
            <option value="a4">A4</option>
          </select>
        </div>
      </div>
      <ul className="sheets">
        {sheets?.map(({ name, title, reader }) => (
          <li key={name}>
            <button
              type="button"
              aria-expanded={name === chosen}
              onClick={() => setChosen(name === chosen ? undefined : name)}
            >
              {title}
            </button>{" "}
            <span className="row-doc">{reader}</span>
            {sheet && name === chosen && <SheetPreview open={open} sheet={sheet} units={units} paper={paper} />}
          </li>
        ))}
      </ul>
      <HistoryList kind="jobs" open={open} hand={hand} />
      <OtherFiles open={open} units={units} />
      <details className="group">
        <summary>
          Photographs <span className="row-doc">of the floor, the holes and the anchors</span>
        </summary>
        <JobPhotographs jobId={open.id} />
      </details>
      <p>
        <a href={`/api/jobs/${encodeURIComponent(open.id)}/export`} download>
          This job with its history and photographs, as one file
        </a>
      </p>
      <details className="group">
        <summary>
          The job as a file <span className="row-doc">everything in it, to be read and written by hand</span>
        </summary>
        <JobFile
          text={open.text}
          mistakes={answers.last?.mistakes ?? []}
          warnings={answers.last?.warnings ?? []}
          onWrite={(written) => open.change("type the file", () => written)}
        />
      </details>
    </>
  );
};
