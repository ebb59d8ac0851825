import { stringify } from "csv-stringify/browser/esm/sync";

export type CsvCell = string | number | undefined;

/**
 * A table as comma-separated text with CRLF line ends [rfc-4180]. An empty cell is something nobody recorded. Words that
 * a spreadsheet would run as a formula get an apostrophe in front.
 */
export const csv = (heading: readonly string[], rows: readonly (readonly CsvCell[])[]): string =>
  stringify([[...heading], ...rows.map((row) => row.map((cell) => cell ?? ""))], {
    escape_formulas: true,
    record_delimiter: "windows",
  });
