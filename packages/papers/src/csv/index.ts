export { type CsvCell, csv } from "./csv.ts";
export { historyCsv } from "./history.ts";
