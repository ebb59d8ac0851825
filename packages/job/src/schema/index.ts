export { jobFileSchema, jobJsonSchema, liftJsonSchema, liftSheetSchema } from "./file-schemas.ts";
export { issueTable, keyTables } from "./key-table.ts";
