export { type CsvCell, csv } from "./csv.ts";
export { historyCsv } from "./history.ts";
export { orderCsv } from "./order-csv.ts";
