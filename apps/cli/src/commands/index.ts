import { checkCommand } from "./check.ts";
import { cureCommand } from "./cure.ts";
import { hitCommand } from "./hit.ts";
import { jointsCommand } from "./joints.ts";
import { liftsCommand } from "./lifts.ts";
import { orderCommand } from "./order.ts";
import { padCommand } from "./pad.ts";
import { placeCommand } from "./place.ts";
import { readCommand } from "./read.ts";
import { recordCommand } from "./record.ts";
import { referCommand } from "./refer.ts";
import { setOutCommand } from "./setout.ts";
import { sheetCommand } from "./sheet.ts";
import { surveyCommand } from "./survey.ts";
import { torqueCommand } from "./torque.ts";
import { validateCommand } from "./validate.ts";
import { vehicleCommand } from "./vehicle.ts";

/** In the order of the work. */
export const commands = [
  readCommand,
  checkCommand,
  surveyCommand,
  placeCommand,
  liftsCommand,
  padCommand,
  jointsCommand,
  orderCommand,
  cureCommand,
  sheetCommand,
  referCommand,
  setOutCommand,
  hitCommand,
  recordCommand,
  torqueCommand,
  vehicleCommand,
  validateCommand,
];
