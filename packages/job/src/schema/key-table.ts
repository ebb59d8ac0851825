import { capital, dimensionWords } from "@floorworthy/engine/quantities";
import type { AnyField, Shape } from "../fields/field.ts";
import { priceExample } from "../fields/index.ts";
import { jobFields } from "../form/index.ts";
import { issueCatalogue } from "../issues/catalogue.ts";

const orUnknown = (shape: { readonly may: string }): string => (shape.may === "be-unknown" ? " or `unknown`" : "");

const write = (shape: Shape): string => {
  switch (shape.kind) {
    case "quantity": {
      const sign = shape.sign === "any" ? "" : shape.sign === "positive" ? ", above zero" : ", zero or more";
      return `${dimensionWords[shape.dimension].name}${sign}${orUnknown(shape)}`;
    }
    case "choice":
      return `${Object.entries(shape.words)
        .map(([word, means]) => `\`${word}\` (${means})`)
        .join(", ")}${orUnknown(shape)}`;
    case "price":
      return `a price, such as ${priceExample[shape.by]}, or \`unknown\``;
    case "text":
      return `text, up to ${shape.most} characters`;
    case "date":
      return "a date, year-month-day";
    case "version":
      return "`1`";
    case "point":
      return `a place \`[${shape.axes.join(", ")}]\``;
    case "list":
      return `a list (up to ${shape.most}) of ${shape.of.shape.kind === "group" ? "groups" : write(shape.of.shape)}`;
    case "group":
      return "a group";
    case "either":
      return shape.of
        .map((field) =>
          field.shape.kind === "group" ? `{${Object.keys(field.shape.fields).join(", ")}}` : write(field.shape),
        )
        .join(", or ");
  }
};

/** The group of keys a field leads to, with how its path goes on. */
const inner = (
  shape: Shape,
): readonly { readonly fields: Readonly<Record<string, AnyField>>; readonly mark: string }[] => {
  if (shape.kind === "group") return [{ fields: shape.fields, mark: "" }];
  if (shape.kind === "list") return inner(shape.of.shape).map(({ fields, mark }) => ({ fields, mark: `[]${mark}` }));
  if (shape.kind === "either") return inner(shape.of[0]!.shape).filter(({ fields }) => !("width" in fields));
  return [];
};

const section = (path: string, doc: string, fields: Readonly<Record<string, AnyField>>): readonly string[] => {
  const rows = Object.entries(fields).map(
    ([key, field]) =>
      `| \`${key}\`${field.need === "required" ? " (needed)" : ""} | ${write(field.shape)} | ${field.doc} |`,
  );
  const below = Object.entries(fields).flatMap(([key, field]) =>
    inner(field.shape).flatMap(({ fields: inside, mark }) =>
      section(`${path === "" ? "" : `${path}.`}${key}${mark}`, field.doc, inside),
    ),
  );
  const title = path === "" ? "### The file" : `### \`${path}\``;
  return [
    title,
    "",
    ...(doc === "" ? [] : [`${capital(doc)}.`, ""]),
    "| key | write | meaning |",
    "|---|---|---|",
    ...rows,
    "",
    ...below,
  ];
};

/** Every key of the job file in tables, as printed in docs/job-file.md. */
export const keyTables = (): string =>
  section("", "", jobFields as unknown as Readonly<Record<string, AnyField>>)
    .join("\n")
    .trim();

/** Every issue code with its meaning, as printed in docs/job-file.md. */
export const issueTable = (): string =>
  [
    "| code | meaning |",
    "|---|---|",
    ...Object.entries(issueCatalogue).map(([code, means]) => `| \`${code}\` | ${means} |`),
  ].join("\n");
