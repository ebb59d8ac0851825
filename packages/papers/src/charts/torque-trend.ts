import type { Assessment } from "@floorworthy/assess";
import { noRoundWords, type Upkeep, upkeepOf } from "@floorworthy/assess/upkeep";
import type { Rect } from "@floorworthy/engine/geometry";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { bodyOf, framed, words } from "../sheets/frame.ts";
import type { Sheet, SheetOptions } from "../sheets/sheet.ts";
import { anchorPanel, type PanelScale } from "./anchor-panel.ts";
import { dayNumber } from "./axis.ts";

const MOST = 24;
const GAP = 2.5;
const LEGEND = 9;

/**
 * Torque found and movement of every anchor against the date, one small panel each on one scale. It is evidence, so that
 * it is drawn under a stop as well. Unable where nobody has been round.
 */
const torqueTrend = (job: Job, _: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  const upkeep = upkeepOf(job, date);
  const { anchors, next } = upkeep;
  if (upkeep.lastRound === undefined) return unable("torque trend", "No round of the nuts is written down yet.");
  if (anchors.length > MOST)
    return unable("torque trend", `More than ${MOST} anchors do not fit on one readable page.`);
  const box = bodyOf({ paper, lies: "on-its-side" });
  const drawing = framed(
    {
      paper,
      lies: "on-its-side",
      title: "Anchors over the years",
      sentence: upkeep.sentence + (upkeep.answer === "sound" ? "" : ` ${upkeep.reasons[0] ?? ""}`),
      aside: `as of ${date}`,
      description: describe(upkeep),
      cells: [
        { share: 70, cells: [{ caption: "Job", words: given(job.title, job.customer, job.place) }] },
        { share: 45, cells: [{ caption: "Lift", words: given(job.lift.name, job.lift.edition) }] },
        { share: 45, cells: [{ caption: "Set on", words: [job.installation?.date ?? "not written down"] }] },
        { share: 45, cells: [{ caption: "Last round", words: [upkeep.lastRound] }] },
        {
          share: 58,
          cells: [
            {
              caption: "Next round",
              words: next ? [next.when, next.reason.words] : [noRoundWords(upkeep.answer)],
            },
          ],
        },
      ],
    },
    [...legend(job, box), ...panels(job, upkeep, { ...box, y0: box.y0 + LEGEND })],
  );
  return [drawing];
};

const given = (...texts: readonly (string | undefined)[]): readonly string[] =>
  texts.filter((text) => text !== undefined);

const describe = ({ anchors, sentence }: Upkeep): string =>
  `${sentence} ${anchors.map((anchor) => anchor.sentence).join(" ")}`;

const legend = (job: Job, box: Rect): readonly Item[] => {
  const si = job.units === "si";
  const text = `Above: torque found, ${si ? "N·m" : "lb-ft"} (open circle; a stroke leads up to the set torque where the nut was brought back to it; dashes: set torque). Below: movement, ${si ? "mm" : "in"} (full circles: take-up of the nut added up; crosses: rise of the stud; dashes: limit). Settling anchors level off. A line that goes on rising is an anchor walking out.`;
  return wrapText(text, 2, "regular", box.x1 - box.x0 - 4).map((line, i) =>
    words("note-legend", box.x0 + 2, box.y0 + 3 + i * 2.5, line, 2),
  );
};

const panels = (job: Job, { anchors, today }: Upkeep, box: Rect): readonly Item[] => {
  const columns = anchors.length <= 10 ? Math.max(2, Math.ceil(anchors.length / 2)) : 6;
  const rows = Math.ceil(anchors.length / columns);
  const width = (box.x1 - box.x0 - GAP * (columns + 1)) / columns;
  const height = Math.min(80, (box.y1 - box.y0 - GAP * rows) / rows);
  const scale = scaleOf(job, anchors, today);
  return anchors.flatMap((anchor, i) => {
    const x0 = box.x0 + GAP + (i % columns) * (width + GAP);
    const y0 = box.y0 + Math.floor(i / columns) * (height + GAP);
    return anchorPanel(anchor, { x0, x1: x0 + width, y0, y1: y0 + height }, scale);
  });
};

const scaleOf = (job: Job, anchors: Upkeep["anchors"], today: string): PanelScale => {
  const dates = [...anchors.flatMap(({ rounds }) => rounds.map(({ date }) => date)), today];
  const first = job.installation?.date ?? dates.toSorted()[0]!;
  const most = (values: readonly (number | undefined)[]): number => Math.max(0, ...values.map((value) => value ?? 0));
  return {
    from: dayNumber(first),
    to: Math.max(...dates.map(dayNumber), dayNumber(first) + 30),
    torque: 1.08 * (most(anchors.flatMap(({ setTo, rounds }) => [setTo, ...rounds.map(({ found }) => found)])) || 1),
    movement: 1.08 * most(anchors.flatMap(({ limit, moved, takeUp }) => [limit, moved, takeUp])),
    units: job.units,
  };
};

export const torqueTrendSheet: Sheet = {
  name: "torque-trend",
  title: "Anchors over the years",
  reader: "for the owner and the inspector",
  draw: torqueTrend,
};
