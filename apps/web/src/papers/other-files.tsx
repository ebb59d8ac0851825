import { useMemo } from "react";
import { today } from "../job/today.ts";
import type { OpenDocument } from "../job/use-document.ts";
import type { OtherFile } from "../work/file-calls.ts";
import type { Units } from "../work/messages.ts";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";

const save = ({ name, mime, text }: Omit<OtherFile, "title">, id: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type: mime }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${id}-${name}`;
  link.click();
  URL.revokeObjectURL(address);
};

/** Lists and calendars of the job as it stands on this screen, and the job file itself. */
export const OtherFiles = ({ open, units }: { open: OpenDocument; units: Units }) => {
  const day = useMemo(today, []);
  const work = useWork("otherFiles", [open.text, units, day]);
  const files = work.value?.ok ? work.value.value : [];
  const own: OtherFile = { name: "job.yaml", title: "the job file", mime: "text/yaml;charset=utf-8", text: open.text };
  return (
    <div className="say">
      <WorkState work={work} what="Writing lists and calendars" />
      <ul className="files">
        {[...files, own].map((file) => (
          <li key={file.name}>
            <button type="button" onClick={() => save(file, open.id)}>
              {file.name}
            </button>{" "}
            <span className="row-doc">{file.title}</span>
          </li>
        ))}
      </ul>
    </div>
  );
};
