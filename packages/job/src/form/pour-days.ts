import { isMap, isSeq, type Node } from "yaml";
import { dateExists, type Field } from "../fields/index.ts";
import type { Pour } from "../job.ts";
import { at, type Place, report } from "../reading/place.ts";

const DAY = 86_400_000;

type Path = readonly (string | number)[];

const nodeAt = (root: Node, path: Path): Node | undefined =>
  isMap(root) ? ((root.getIn(path, true) as Node | undefined) ?? undefined) : undefined;

const placeAt = (place: Place, path: Path): Place => path.reduce(at, place);

/** Days of one spell or cover lie in order. */
const spans = (
  root: Node,
  place: Place,
  list: "temperatures" | "covers",
  spells: readonly { readonly fromDay: number; readonly toDay: number | undefined }[],
): void => {
  for (const [i, { fromDay, toDay }] of spells.entries()) {
    if (toDay === undefined || toDay > fromDay) continue;
    const path = [list, i, "toDay"];
    report(placeAt(place, path), nodeAt(root, path), "dates-out-of-order", {
      got: String(toDay),
      message: `The last day, ${toDay}, is not after the first, ${fromDay}.`,
      hint: "Count both from the day of the pour.",
    });
  }
};

/** The number of a day's entry after the pour; undefined where it says neither day nor date. */
const dayOfEntry = (
  { on, day }: { readonly on: string | undefined; readonly day: number | undefined },
  poured: string | undefined,
): number | undefined =>
  day !== undefined
    ? Math.floor(day)
    : on !== undefined && poured !== undefined
      ? Math.round((Date.parse(on) - Date.parse(poured)) / DAY)
      : undefined;

const entries = (root: Node, place: Place, { days = [], date }: Pour): void => {
  const seen = new Set<number>();
  for (const [i, entry] of days.entries()) {
    const path = ["days", i];
    const node = nodeAt(root, path);
    const complain = (code: Parameters<typeof report>[2], got: string, message: string, hint: string): void =>
      report(placeAt(place, path), node, code, { got, message, hint });
    const { on, day, low, high } = entry;
    if (low > high) complain("low-above-high", "", "The lowest of the day lies above its highest.", "Swap them.");
    // a date that is none has been reported where it stands
    if (isMap(node) && node.has("on") && (on === undefined || !dateExists(on))) continue;
    if (on === undefined && day === undefined) {
      complain("missing-key", "", "The day is missing.", "Write on: with a date, or day: counted from the pour.");
      continue;
    }
    if (day === undefined && date === undefined) {
      complain("missing-key", on ?? "", "A date needs the day of the pour to count from.", "Write pour.date as well.");
      continue;
    }
    const count = dayOfEntry(entry, date)!;
    if (count < 0) complain("before-pour", on ?? "", `${on} lies before the pour, ${date}.`, "Correct one of the two.");
    else if (seen.has(count))
      complain("duplicate-date", on ?? String(day), "This day stands twice.", "Keep one entry of each day.");
    seen.add(count);
  }
};

const months = (root: Node, place: Place, { months = [] }: Pour): void => {
  const names = months.map(({ month }) => month);
  for (const [i, name] of names.entries()) {
    if (name === undefined || names.indexOf(name) === i) continue;
    report(placeAt(place, ["months", i, "month"]), nodeAt(root, ["months", i, "month"]), "duplicate-date", {
      got: name,
      message: `${name} stands twice.`,
      hint: "Keep one mean of each month.",
    });
  }
};

/** A list that is written and holds nothing tells no story. */
const empty = (root: Node, place: Place): void => {
  for (const key of ["temperatures", "days", "months"]) {
    const node = nodeAt(root, [key]);
    if (isSeq(node) && node.items.length === 0)
      report(at(place, key), node, "empty-list", {
        message: "The list of temperatures is empty.",
        hint: "Write what was measured, or leave the key out.",
      });
  }
};

const humidity = (root: Node, place: Place, { weather }: Pour): void => {
  if (!weather?.humidity.known || weather.humidity.high <= 1) return;
  const path = ["weather", "humidity"];
  report(placeAt(place, path), nodeAt(root, path), "unusual-share", {
    got: weather.humidity.written,
    message: `"${weather.humidity.written}" is more than all the air can hold.`,
    hint: "Write the relative humidity as a share, such as 45 %.",
  });
};

/** The pour with what only shows when its days are laid side by side. */
export const daysInOrder = (field: Field<Pour>): Field<Pour> => ({
  ...field,
  read: (node, place) => {
    const pour = field.read(node, place);
    spans(node, place, "temperatures", pour.temperatures);
    spans(node, place, "covers", pour.covers ?? []);
    entries(node, place, pour);
    months(node, place, pour);
    humidity(node, place, pour);
    empty(node, place);
    return pour;
  },
});
