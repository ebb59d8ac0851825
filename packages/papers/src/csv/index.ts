export { type CsvCell, csv } from "./csv.ts";
