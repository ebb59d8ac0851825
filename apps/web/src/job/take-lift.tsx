import { putLift } from "@floorworthy/job/editing";
import { useEffect, useState } from "react";
import { type Heading, listDocuments, readDocument } from "../api/documents.ts";
import type { OpenDocument } from "./use-document.ts";

/** The lifts of the catalogue, fetched once the part that needs them is open. */
export const useLifts = () => {
  const [lifts, setLifts] = useState<readonly Heading[]>([]);
  const [fault, setFault] = useState<string>();
  useEffect(() => {
    listDocuments("lifts")
      .then(setLifts)
      .catch((error: Error) => setFault(error.message));
  }, []);
  return { lifts, fault };
};

/** Takes a lift's sheet from the catalogue into the job, which then keeps that edition. */
export const TakeLift = (props: {
  readonly id: string;
  readonly open: OpenDocument;
  readonly lifts: readonly Heading[];
}) => {
  const { id, open, lifts } = props;
  const [fault, setFault] = useState<string>();
  const take = (chosen: string) =>
    readDocument("lifts", chosen)
      .then(({ text }) => open.change("", (job) => putLift(job, text) ?? job))
      .catch((error: Error) => setFault(error.message));
  return (
    <div className="row">
      <label htmlFor={id}>
        Take a lift from the catalogue
        <span className="row-doc">its sheet is copied into this job, which keeps that edition</span>
      </label>
      <div className="row-hand">
        <select id={id} value="" onChange={({ target }) => target.value && take(target.value)}>
          <option value="">choose …</option>
          {lifts.map(({ id: lift, title }) => (
            <option key={lift} value={lift}>
              {title}
            </option>
          ))}
        </select>
      </div>
      {fault && (
        <p role="alert" className="row-said">
          {fault}
        </p>
      )}
    </div>
  );
};
