import { useMemo } from "react";
import type { OpenDocument } from "../job/use-document.ts";
import type { SheetEntry } from "../work/draw-sheet.ts";
import type { Units } from "../work/messages.ts";
import { useWork } from "../work/use-work.ts";

const formats = ["pdf", "svg", "dxf"] as const;

/** A sheet as it will be printed, and the ways to take it along. */
export const SheetPreview = (props: {
  readonly open: OpenDocument;
  readonly sheet: SheetEntry;
  readonly units: Units;
  readonly paper: "letter" | "a4";
}) => {
  const { open, sheet, units, paper } = props;
  const date = useMemo(() => new Date().toISOString().slice(0, 10), []);
  const { value, state, fault } = useWork("drawSheet", [open.text, sheet.name, units, date, paper]);
  const at = `/api/jobs/${encodeURIComponent(open.id)}/papers/${sheet.name}?paper=${paper}&date=${date}&units=${units}`;
  if (fault) return <p role="alert">{fault}</p>;
  if (!value) return <p role="status">Drawing …</p>;
  if (value.kind === "refused")
    return (
      <p className="refused">
        <b>Not for this job.</b> {value.words}
      </p>
    );
  return (
    <div className="preview" data-state={state}>
      <p className="page-hand">
        <button type="button" onClick={() => printPages(value.pages)}>
          Print
        </button>
        {formats.map((format) => (
          <a key={format} href={`${at}&format=${format}`} target="_blank" rel="noreferrer">
            {format.toUpperCase()}
          </a>
        ))}
        {open.keeping.state !== "kept" && <span className="quiet">Files follow once the change is kept.</span>}
      </p>
      {value.pages.map((svg, i) => (
        <img
          // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name
          key={i}
          className="page-picture"
          alt={`${sheet.title}: ${value.description}`}
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`}
        />
      ))}
    </div>
  );
};

/** Prints the pages alone: they are put before the rest, and the print style hides everything else. */
const printPages = (pages: readonly string[]): void => {
  const room = document.createElement("div");
  room.id = "to-print";
  for (const svg of pages) {
    const picture = document.createElement("img");
    picture.alt = "";
    picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
    room.append(picture);
  }
  document.body.append(room);
  globalThis.addEventListener("afterprint", () => room.remove(), { once: true });
  Promise.all([...room.querySelectorAll("img")].map((picture) => picture.decode())).then(() => globalThis.print());
};
