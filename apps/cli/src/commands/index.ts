import { checkCommand } from "./check.ts";
import { hitCommand } from "./hit.ts";
import { placeCommand } from "./place.ts";
import { recordCommand } from "./record.ts";
import { referCommand } from "./refer.ts";
import { setOutCommand } from "./setout.ts";
import { sheetCommand } from "./sheet.ts";
import { surveyCommand } from "./survey.ts";
import { validateCommand } from "./validate.ts";

/** In the order of the work. */
export const commands = [
  checkCommand,
  surveyCommand,
  placeCommand,
  sheetCommand,
  referCommand,
  setOutCommand,
  hitCommand,
  recordCommand,
  validateCommand,
];
