import { date, type Field, type Fields, list, required, text, word } from "../fields/index.ts";
import type { Job, Position } from "../job.ts";
import type { Lift } from "../lift.ts";
import { bayForm, columnsForm } from "./bay-form.ts";
import { floorForm } from "./floor-form.ts";
import { liftForm } from "./lift-form.ts";
import { liftOrReference } from "./lift-reference.ts";
import { padForm } from "./pad-form.ts";
import { pourForm } from "./pour-form.ts";
import { pricesForm } from "./prices-form.ts";
import { choicesForm, settingForm } from "./setting-form.ts";
import { installationForm, visitForm } from "./upkeep-form.ts";
import { vehicleForm } from "./vehicle-form.ts";
import { versionField } from "./version-field.ts";

/** The file's keys. They are the Job's own, save `floorworthy` (its `format`) and `columns` (its `position`). */
export type JobFile = Omit<Job, "format" | "position"> & {
  readonly floorworthy: 1;
  readonly columns: Position | undefined;
};

/** Declared in the order they are read: the bay before what stands in it. */
export const jobFields: Fields<JobFile> = {
  floorworthy: versionField,
  title: required({ ...(text("what the job is called, in a few words", 200) as Field<string>), absent: () => "" }),
  customer: text("whose floor", 200),
  place: text("where", 300),
  date: date("the day the job was looked at"),
  units: word({ "inch-pound": "inches, pounds, psi", si: "mm, kN, MPa" }, "units to print in", "inch-pound"),
  setting: settingForm,
  lift: liftOrReference,
  bay: bayForm,
  floor: floorForm,
  columns: columnsForm,
  vehicles: list("vehicles to be lifted", vehicleForm, { most: 50 }),
  pad: padForm,
  pour: pourForm,
  prices: pricesForm,
  installation: installationForm,
  visits: list("rounds of the nuts, oldest first", visitForm, { most: 200 }),
  choices: choicesForm,
};

export const liftSheetFields: Fields<{ readonly floorworthy: 1; readonly lift: Lift }> = {
  floorworthy: versionField,
  lift: liftForm,
};
