export { type JobFile, jobFields, liftSheetFields } from "./job-form.ts";
