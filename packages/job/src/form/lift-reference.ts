import { isMap, isScalar, type Node } from "yaml";
import { entriesOf } from "../fields/entries.ts";
import type { Field } from "../fields/field.ts";
import { group, required, text } from "../fields/index.ts";
import type { Lift } from "../lift.ts";
import { parseSource } from "../reading/parse-source.ts";
import { at, type Place, report } from "../reading/place.ts";
import { liftForm } from "./lift-form.ts";

const reference = group<{ readonly file: string | undefined }>("a reference", "a lift sheet in a file of its own", {
  file: required(text("the file's name, from the job's own folder", 200)),
});

const refuse = (
  place: Place,
  node: Node,
  code: "file-not-found" | "file-in-file",
  file: string,
  message: string,
  hint: string,
): Lift => {
  report(at(place, "file"), node, code, { got: file, message, hint });
  return liftForm.absent(place);
};

const fetched = (node: Node, place: Place, file: string): Lift => {
  if (place.within === "sheet")
    return refuse(
      place,
      node,
      "file-in-file",
      file,
      "A lift sheet cannot refer to another file.",
      "Write the lift out here.",
    );
  const content = place.desk.load?.(file);
  if (content === undefined)
    return refuse(
      place,
      node,
      "file-not-found",
      file,
      `The file "${file.slice(0, 60)}" could not be read.`,
      "Check the name, or write the lift out here.",
    );
  const source = parseSource(content, place.desk, file, "sheet");
  if (!source) return liftForm.absent(place);
  const inside: Place = { ...source.place, path: place.path };
  const entries = entriesOf(source.root, inside, ["floorworthy", "lift"], "a lift sheet");
  const sheet = entries?.get("lift")?.value;
  if (sheet) return liftOrReference.read(sheet, inside);
  if (entries)
    report(inside, source.root, "missing-key", {
      message: '"lift" is missing.',
      hint: "A lift sheet holds the lift under the key lift.",
    });
  return liftForm.absent(place);
};

/** A lift written out, or `{ file: name }` of a lift sheet. */
export const liftOrReference: Field<Lift> = {
  ...liftForm,
  shape: { kind: "either", of: [liftForm, reference] },
  read: (node, place) => {
    const file = isMap(node) ? node.get("file", true) : undefined;
    if (!isScalar(file) || typeof file.value !== "string") return liftForm.read(node, place);
    entriesOf(node, place, ["file"], "a reference");
    return fetched(file, place, file.value);
  },
};
