import type { Assessment } from "@floorworthy/assess";
import { areaWords, type MarginMap, type Placing } from "@floorworthy/assess/place";
import type { Point } from "@floorworthy/engine/geometry";
import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { printFeet, printLength } from "../print/measure.ts";
import { type Note, note } from "./note.ts";

const fromWalls = ({ units }: Job, { x, y }: Point): string => {
  const unit = units === "si" ? " mm" : "";
  return `${printFeet(x, units)}${unit} from the left wall, ${printFeet(y, units)}${unit} from the back wall`;
};

/** What the sheet says in words, most needed first. */
export const placingNotes = (
  job: Job,
  placing: Placing,
  assessment: Assessment,
  map: MarginMap | undefined,
): readonly Note[] => {
  const { proposed, smallest, roomiest, ranges, blockers, ways, fits, notes } = placing;
  const columns = proposed
    ? [
        `Left column: ${fromWalls(job, proposed.position.left)}.`,
        `Right column: ${fromWalls(job, proposed.position.right)}.`,
        smallest && smallest.distance > 0.5
          ? `The smallest move that keeps every distance: ${smallest.words}.`
          : undefined,
        roomiest && roomiest.distance > 0.5 ? `The place with most room around it: ${roomiest.words}.` : undefined,
      ]
    : [];
  const others = ways.filter((way) => way.stand !== (proposed?.stand ?? "as-wanted") && way.regions.length > 0);
  return [
    note(placing.answer === "here" ? "Where it stands" : "Set out here", columns),
    note("How far it may be moved", [
      ...ranges.map(({ axis, sentence }) => `${axis === "y" ? "Along the bay" : "Across the bay"}: ${sentence}`),
    ]),
    note(
      "In the way where it was wanted",
      blockers.map(({ sentence }) => sentence),
    ),
    note(
      "Ways round that are closed",
      (ways[0]?.closed ?? []).slice(0, 4).map(({ sentence }) => sentence),
    ),
    note(
      "Other ways to stand it",
      others.map(
        (way) =>
          `${capital(way.words)}: ${areaWords(
            way.regions.reduce((sum, r) => sum + r.area, 0),
            job.units,
          )} to choose from, the nearest ${printLength(way.regions[0]!.away, job.units)} away.`,
      ),
    ),
    note(
      "Height and width",
      fits.map(({ sentence, result }) => `${result === "does-not-fit" ? "DOES NOT FIT. " : ""}${sentence}`),
    ),
    note("The margin by place", map ? mapWords(map) : []),
    note("How it was found", [
      "Hatched: where the lift's middle (cross) may be, every anchor, plate and the vehicle at its distance. Dashed plates: as wanted.",
      ...notes,
    ]),
    note("Before a hole is drilled", [
      "This sheet speaks of distances only. Thickness, strength and everything else on the maker's page must hold at the new place too.",
      ...assessment.cautions.slice(0, 2),
    ]),
  ].filter(({ lines }) => lines.length > 0);
};

const mapWords = ({ least, most, points, state }: MarginMap): string[] => {
  if (least?.ratio === undefined || most?.ratio === undefined) return [];
  const say = (ratio: number): string => (Number.isFinite(ratio) ? ratio.toFixed(2) : "beyond all");
  const range =
    most.ratio - least.ratio < 0.005
      ? `The worst ratio is ${say(most.ratio)} everywhere (${(most.title ?? "").toLowerCase()}).`
      : `The worst ratio is ${say(least.ratio)} at best (${(least.title ?? "").toLowerCase()}) and ${say(most.ratio)} at worst (${(most.title ?? "").toLowerCase()}).`;
  return [
    `${range} ${points.length} places looked at${state === "cancelled" ? ", stopped before the end" : ""}; 1.00 is what may be asked.`,
    "Each figure is the worst of its cell. It is advice: the maker's page decides.",
  ];
};
