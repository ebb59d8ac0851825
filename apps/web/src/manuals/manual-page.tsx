import { writtenTree } from "@floorworthy/job/listing";
import type { Candidate, FieldName } from "@floorworthy/manuals";
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import { keepPicture, pagePicture, type ReadManual, readManual } from "../api/manuals.ts";
import type { Session } from "../api/session.ts";
import { labelOf } from "../form/label-of.ts";
import { factText, reach } from "../form/reach.ts";
import { KeepingLine } from "../job/keeping-line.tsx";
import { type OpenDocument, useDocument } from "../job/use-document.ts";
import { fieldAt } from "../plan/hand/field-at.ts";
import { ManualLine } from "./manual-row.tsx";
import { PageSight } from "./page-sight.tsx";
import { hasPlace, pathOf, putPicture, putValue } from "./put-value.ts";
import { type ManualRow, rowsFor } from "./rows.ts";

/** What a value is, in the words of the form that keeps it. */
const nameOf = (field: FieldName): string => fieldAt(`lift.${field}`)?.doc || labelOf(field.replaceAll(".", ", "));

/** A row itself, not a button in it, which has its own use for the key. */
const onRow = (target: EventTarget): boolean => target instanceof HTMLElement && target.matches("[data-field]");

/** A manual beside its lift sheet: every value that was read, with the line it came from, waits for a person's word. */
export const ManualPage = ({ id, hash, session }: { id: string; hash: string; session: Session }) => {
  const open = useDocument("lifts", id);
  const [read, setRead] = useState<ReadManual>();
  const [fault, setFault] = useState<string>();
  useEffect(() => {
    readManual(id, hash)
      .then(setRead)
      .catch((error: Error) => setFault(error.message));
  }, [id, hash]);
  if (fault !== undefined) return <p role="alert">{fault}</p>;
  if (!read || !open) return <p role="status">Reading the manual; a long one takes some seconds …</p>;
  if ("fault" in open) return <p role="alert">{open.fault}</p>;
  if (!read.reading.ok)
    return (
      <main className="manual">
        <p role="alert">
          {read.reading.trouble.message} {read.reading.trouble.hint}
        </p>
        <p>
          <a href={`#/lifts/${encodeURIComponent(id)}`}>Type the lift's page by hand</a>
        </p>
      </main>
    );
  return <Confirm open={open} hash={hash} name={read.name} reading={read.reading} session={session} />;
};

type Reading = Extract<ReadManual["reading"], { readonly ok: true }>;

const Confirm = (props: {
  readonly open: OpenDocument;
  readonly hash: string;
  readonly name: string;
  readonly reading: Reading;
  readonly session: Session;
}) => {
  const { open, hash, name, reading, session } = props;
  const [model, setModel] = useState(reading.models[0]);
  const [rejected, setRejected] = useState<ReadonlySet<string>>(new Set());
  const rows = useMemo(() => rowsFor(reading, model), [reading, model]);
  const found = rows.filter(({ found }) => found.length > 0);
  const lacking = rows.filter(({ found, field }) => found.length === 0 && hasPlace(field));
  const [at, setAt] = useState<FieldName | undefined>(found[0]?.field);
  const [sight, setSight] = useState<Candidate | undefined>(found[0]?.found[0]);
  const tree = useMemo(() => writtenTree(open.text), [open.text]);
  const standing = (field: FieldName): string => (hasPlace(field) ? factText(reach(tree, pathOf(field))) : "");
  const list = useRef<HTMLOListElement>(null);
  const writes = session.person?.role !== "reader";

  const take = (field: FieldName, written: string, candidate: Candidate | undefined) => {
    open.change("", putValue(field, written, { document: name, candidate }));
    if (!candidate) return;
    const { page, box, line } = candidate.evidence;
    keepPicture(open.id, hash, page, box)
      .then((picture) => open.change("", putPicture(field, line, picture.hash)))
      .catch(() => undefined); // the words of the line stand there in any case
  };
  const choose = (row: ManualRow | undefined) => {
    if (!row) return;
    setAt(row.field);
    setSight(row.found[0]);
    list.current?.querySelector<HTMLElement>(`[data-field="${row.field}"]`)?.focus();
  };
  const all = [...found, ...lacking];
  const onKey = (event: KeyboardEvent) => {
    const row = all.find(({ field }) => field === at);
    const typing = event.target instanceof HTMLInputElement;
    if (!row || event.ctrlKey || event.metaKey || event.altKey) return;
    const next = (by: 1 | -1) => choose(all[all.indexOf(row) + by]);
    const first = row.found[0];
    if (event.key === "ArrowDown") next(1);
    else if (event.key === "ArrowUp") next(-1);
    else if (typing) return;
    else if (event.key === "Enter" && onRow(event.target)) {
      if (first && writes && hasPlace(row.field)) take(row.field, first.written, first);
      next(1);
    } else if ((event.key === "x" || event.key === "Delete") && first) {
      setRejected((before) => new Set([...before, first.id]));
      next(1);
    } else if (event.key === "c")
      list.current?.querySelector<HTMLElement>(`[data-field="${row.field}"] input`)?.focus();
    else return;
    event.preventDefault();
  };
  const done = found.filter(
    ({ field, found: [first] }) => standing(field) !== "" || (first && rejected.has(first.id)),
  ).length;
  return (
    <main className="manual">
      <header className="page-head">
        <h2>From the manual: {name}</h2>
        <a href={`#/lifts/${encodeURIComponent(open.id)}`}>To the lift's sheet</a>
      </header>
      <KeepingLine open={open} hand={writes ? "writes" : "only-looks"} />
      <p>
        {found.length} values were read on {reading.pages.length} pages; {done} are settled. Nothing is taken before you
        say so: <kbd>Enter</kbd> takes the value in sight, <kbd>c</kbd> changes it, <kbd>x</kbd> rejects it,{" "}
        <kbd>↓</kbd> goes on.
      </p>
      {reading.unread.length > 0 && <p role="alert">Pages that could not be read: {reading.unread.join(", ")}.</p>}
      {reading.models.length > 1 && (
        <div className="row">
          <label htmlFor="manual-model">Model</label>
          <div className="row-hand">
            <select id="manual-model" value={model} onChange={({ target }) => setModel(target.value)}>
              {reading.models.map((each) => (
                <option key={each}>{each}</option>
              ))}
            </select>
          </div>
        </div>
      )}
      <div className="manual-table">
        <ol ref={list} className="manual-rows" onKeyDown={onKey}>
          {all.map((row) => (
            <ManualLine
              key={row.field}
              row={row}
              label={nameOf(row.field)}
              standing={standing(row.field)}
              rejected={rejected}
              chosen={row.field === at}
              hand={writes && hasPlace(row.field) ? "writes" : "only-looks"}
              onChoose={(candidate) => {
                setAt(row.field);
                setSight(candidate ?? row.found[0]);
              }}
              onTake={(written, candidate) => take(row.field, written, candidate)}
              onReject={(candidate) => setRejected((before) => new Set([...before, candidate.id]))}
            />
          ))}
        </ol>
        {sight && (
          <PageSight
            picture={pagePicture(open.id, hash, sight.evidence.page)}
            candidate={sight}
            pages={reading.pages}
          />
        )}
      </div>
    </main>
  );
};
