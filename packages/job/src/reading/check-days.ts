import type { Node, YAMLMap } from "yaml";
import type { JobFile } from "../form/index.ts";
import { at, type Place, report } from "./place.ts";

/** A nut turned further at one round would have left its bolt: five turns of a 3/4-10 thread are half an inch. */
const MOST_TURNS = 5;

/** What only shows when the days of a job are laid side by side: rounds and looks in order, each once, none before the setting. */
export const checkDays = (file: JobFile, root: YAMLMap, place: Place): void => {
  inOrder(
    file.visits.map(({ date }) => date),
    "Rounds of the nuts",
    ["visits"],
    "date",
    root,
    place,
  );
  for (const [i, { name, seen }] of file.floor.cracks.entries())
    inOrder(
      seen.map(({ on }) => on),
      `Looks at crack ${name || i + 1}`,
      ["floor", "cracks", i, "seen"],
      "on",
      root,
      place,
    );
  notBeforeSetting(file, root, place);
  readings(file, root, place);
};

type Path = readonly (string | number)[];

const nodeAt = (root: YAMLMap, path: Path): Node | undefined =>
  (root.getIn(path, true) as Node | undefined) ?? undefined;

const placeAt = (place: Place, path: Path): Place => path.reduce(at, place);

/** Each mistake once: a day that stands twice is not also out of order. Days that are no dates have been reported. */
const inOrder = (days: readonly string[], what: string, list: Path, key: string, root: YAMLMap, place: Place): void => {
  let latest = "";
  for (const [i, day] of days.entries()) {
    if (day === "") continue;
    const path = [...list, i, key];
    if (days.indexOf(day) < i)
      report(placeAt(place, path), nodeAt(root, path), "duplicate-date", {
        got: day,
        message: `${what}: ${day} stands twice.`,
        hint: "Put the readings of one day together, or correct the date.",
      });
    else if (day < latest)
      report(placeAt(place, path), nodeAt(root, path), "dates-out-of-order", {
        got: day,
        message: `${what}: ${day} stands after ${latest}.`,
        hint: "Write the oldest first.",
      });
    if (day > latest) latest = day;
  }
};

const notBeforeSetting = ({ visits, installation }: JobFile, root: YAMLMap, place: Place): void => {
  const set = installation?.date;
  if (!set) return;
  for (const [i, { date }] of visits.entries())
    if (date !== "" && date <= set) {
      const path = ["visits", i, "date"];
      report(placeAt(place, path), nodeAt(root, path), "before-setting", {
        got: date,
        message: `The round of ${date} is not after the day the lift was set, ${set}.`,
        hint: "Correct one of the two; the torque of the first day belongs to installation.holes.",
      });
    }
};

const readings = ({ visits }: JobFile, root: YAMLMap, place: Place): void => {
  for (const [i, visit] of visits.entries()) {
    const names = visit.readings.map(({ anchor }) => anchor.trim().toUpperCase());
    for (const [k, { anchor, turned }] of visit.readings.entries()) {
      const path = ["visits", i, "readings", k];
      if (anchor !== "" && names.indexOf(names[k]!) < k)
        report(placeAt(place, [...path, "anchor"]), nodeAt(root, [...path, "anchor"]), "duplicate-anchor", {
          got: anchor,
          message: `The round of ${visit.date || `visits[${i}]`} reads ${anchor} twice.`,
          hint: "Keep one reading of each anchor and day.",
        });
      if (turned.known && turned.value > MOST_TURNS * 2 * Math.PI)
        report(placeAt(place, [...path, "turned"]), nodeAt(root, [...path, "turned"]), "impossible-angle", {
          got: turned.written,
          message: `"${turned.written}" is more than ${MOST_TURNS} full turns; the nut would have left its bolt.`,
          hint: "Check the figure and its unit: 90 deg is a quarter turn.",
        });
    }
  }
};
