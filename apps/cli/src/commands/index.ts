import { checkCommand } from "./check.ts";
import { sheetCommand } from "./sheet.ts";
import { validateCommand } from "./validate.ts";

/** In the order of the work. */
export const commands = [checkCommand, sheetCommand, validateCommand];
