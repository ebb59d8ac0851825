import { liftFileOf } from "@floorworthy/job/editing";
import { ask } from "../api/ask.ts";
import { createDocument } from "../api/documents.ts";

/** Takes in a job file, or a job that was exported with its history. Returns its id. */
export const takeJobFile = async (file: File): Promise<string> => {
  if (file.name.endsWith(".gz")) {
    const bytes = new Blob([await file.arrayBuffer()], { type: "application/gzip" });
    return (await ask<{ id: string }>("POST", "/api/import", bytes)).id;
  }
  const text = await file.text();
  const sheet = liftFileOf(text);
  const note = sheet ? `from ${file.name}; its lift stands in ${sheet}` : `from ${file.name}`;
  return (await createDocument("jobs", text, note.slice(0, 200))).id;
};
