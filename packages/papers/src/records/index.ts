export { recordNames, recordSheets } from "./record-sheets.ts";
