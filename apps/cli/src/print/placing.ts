import { areaWords, type MarginMap, type Placing } from "@floorworthy/assess/place";
import type { Point } from "@floorworthy/engine/geometry";
import { printQuantity } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { table, wrap } from "./text.ts";

const answers: Readonly<Record<Placing["answer"], string>> = {
  here: "IT MAY STAND HERE",
  move: "MOVE IT",
  nowhere: "NO PLACE",
  stopped: "STOPPED",
  "not-known": "NOT KNOWN",
};

/** Answer first, then where exactly, what is in the way, and the map. */
export const placingLines = (job: Job, placing: Placing, map: MarginMap | undefined): string[] => [
  job.title,
  "",
  answers[placing.answer],
  ...wrap(placing.sentence),
  ...section(
    "In the way where it was wanted",
    placing.blockers.map(({ sentence }) => sentence),
  ),
  ...places(job, placing),
  ...section(
    placing.wanted ? "How far it may be moved from where it was wanted" : "How far it may be moved",
    placing.ranges.map(({ axis, sentence }) => `${axis === "y" ? "along" : "across"} the bay: ${sentence}`),
  ),
  ...ways(job, placing),
  ...section(
    "Ways round that are closed",
    (placing.ways[0]?.closed ?? []).map(({ sentence }) => sentence),
  ),
  ...section(
    "Height and width",
    placing.fits.map(({ result, sentence }) => `${result === "does-not-fit" ? "DOES NOT FIT. " : ""}${sentence}`),
  ),
  ...(map ? mapLines(job, map) : []),
  ...section("Taken and left out", placing.notes),
  "",
  ...wrap(
    "Distances only: thickness, strength and every other line of the maker's page must hold at the place too.",
    "! ",
  ),
];

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.flatMap((line) => wrap(line, "- "))];

const places = (job: Job, { proposed, smallest, roomiest, wanted }: Placing): string[] => {
  const say = (mm: number): string => printQuantity(mm, "length", { system: job.units });
  const row = (words: string, left: Point, right: Point): string[] => [
    words,
    say(left.x),
    say(left.y),
    say(right.x),
    say(right.y),
  ];
  const rows = [
    ...(wanted ? [row("as wanted", wanted.position.left, wanted.position.right)] : []),
    ...(proposed ? [row("proposed", proposed.position.left, proposed.position.right)] : []),
    ...(smallest && smallest.distance > 0.5
      ? [row("smallest move, exact", smallest.position.left, smallest.position.right)]
      : []),
    ...(roomiest ? [row("most room around it", roomiest.position.left, roomiest.position.right)] : []),
  ];
  return rows.length === 0
    ? []
    : [
        "",
        "Columns, from the left and the back wall",
        ...table([["", "left x", "left y", "right x", "right y"], ...rows]),
      ];
};

const ways = (job: Job, placing: Placing): string[] => {
  const rows = placing.ways.map((way) => [
    way.words,
    way.regions.length === 0 ? "nowhere" : `${way.regions.length} area${way.regions.length === 1 ? "" : "s"}`,
    way.regions.length === 0
      ? ""
      : areaWords(
          way.regions.reduce((sum, { area }) => sum + area, 0),
          job.units,
        ),
    way.regions[0] ? `nearest ${printQuantity(way.regions[0].away, "length", { system: job.units })}` : "",
  ]);
  return rows.length === 0 ? [] : ["", "Where its middle may be", ...table(rows)];
};

const mapLines = (job: Job, { points, least, most, state, notes }: MarginMap): string[] => {
  const say = (mm: number): string => printQuantity(mm, "length", { system: job.units });
  const at = (p: typeof least): string[] =>
    p?.ratio === undefined
      ? ["", "", "", ""]
      : [say(p.at.x), say(p.at.y), Number.isFinite(p.ratio) ? p.ratio.toFixed(2) : "no limit", p.title ?? ""];
  return [
    "",
    `The margin over ${points.length} places${state === "cancelled" ? " (stopped before the end)" : ""}, by the lift's middle; 1.00 is what may be asked`,
    ...table([
      ["", "x", "y", "worst ratio", "governs"],
      ["least", ...at(least)],
      ["most", ...at(most)],
      ["proposed", ...at(points[0])],
    ]),
    ...notes.flatMap((line) => wrap(line, "- ")),
  ];
};
