import { type Document, isMap, type Node, parseDocument } from "yaml";
import { yamlOptions } from "../reading/parse-source.ts";

/**
 * Puts the lift of a lift sheet into a job file's text, in place of the one there or of a reference to a file, so that the
 * job keeps the edition it was judged with. The rest of the job stays as it was.
 * @returns the new text; undefined when one of them is no YAML or the sheet holds no lift
 */
export const putLift = (job: string, sheet: string): string | undefined => {
  const document = parseDocument(job, yamlOptions) as unknown as Document;
  const source = parseDocument(sheet, yamlOptions) as unknown as Document;
  if (document.errors.length + source.errors.length > 0 || !isMap(document.contents) || !isMap(source.contents))
    return undefined;
  const lift = source.contents.get("lift", true) as Node | undefined;
  if (!isMap(lift)) return undefined;
  document.contents.set("lift", lift);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
};

/** The name of the lift sheet a job refers to, if it does. */
export const liftFileOf = (job: string): string | undefined => {
  const document = parseDocument(job, yamlOptions) as unknown as Document;
  const name = document.errors.length > 0 ? undefined : document.getIn(["lift", "file"]);
  return typeof name === "string" ? name : undefined;
};

/** The job with its lift written out, where it refers to a sheet that can be had; else as it was. */
export const withOwnLift = (job: string, load: (name: string) => string | undefined): string => {
  const name = liftFileOf(job);
  const sheet = name === undefined ? undefined : load(name);
  return (sheet !== undefined && putLift(job, sheet)) || job;
};
