import type { Job } from "@floorworthy/job";
import type { MarginAnswer, Outcome, PageAnswer, PageLine, Stop } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { marginOf, noMargin } from "../margin/margin.ts";
import { pageOf } from "../page/page-lines.ts";
import { liftsStop } from "../place/lifts-stop.ts";
import { placeLift } from "../place/place-lift.ts";
import type { Placing } from "../place/placing.ts";
import { stopsOf } from "../stops/stops.ts";
import { onFeet } from "./on-feet.ts";

/** The judgement of a lift that needs no anchors, as far as it may be judged. */
export interface LooseJudgement {
  readonly outcome: Outcome;
  readonly sentence: string;
  readonly reasons: readonly string[];
  readonly conditions: readonly string[];
  readonly page: PageAnswer["verdict"];
  readonly margin: MarginAnswer["verdict"];
  readonly placing: Placing | undefined;
}

/**
 * A lift without anchors on this floor: its maker's page line by line, its place by its feet. A stop that speaks of holes
 * only (tendons, tubes) lets it be judged, but nothing may be found out by drilling; every other stop holds for it too.
 */
export const judgeLoose = (job: Job): LooseJudgement => {
  const stops = stopsOf(job);
  const hard = stops.find((stop) => liftsStop(job.lift, stop) === "stops");
  if (hard) return stopped(hard);
  const seen = onFeet(job);
  const page = pageOf(seen, factsOf(seen));
  const lines = page.lines.filter(({ id }) => !OF_THE_PLACE.has(id));
  if (page.verdict === "not-judged") return unread();
  const placing = placeLift(job);
  const margin = stops.length > 0 ? noMargin("Not computed under a stop.") : marginOf(job, factsOf(job), "word");
  const common = { page: verdictOf(lines), margin: margin.verdict, placing };
  const fails = lines.filter(({ result }) => result === "fails");
  if (fails[0]) {
    const young = fails[0].id === "days";
    return {
      ...common,
      outcome: young ? "wait" : stops.length > 0 ? "refuse" : "pour",
      sentence: `${young ? "Wait" : "Not on this floor as it stands"}. ${said(fails[0])}.`,
      reasons: fails.map((line) => `${said(line)}.`),
      conditions: [],
    };
  }
  if (placing.answer === "nowhere")
    return { ...common, outcome: "refuse", sentence: placing.sentence, reasons: [placing.sentence], conditions: [] };
  const open = lines.filter(({ result }) => result === "not-shown");
  const how = stops.length > 0 ? " from the builder's records or by measuring without drilling" : "";
  const conditions = [
    ...open.map((line) => `Show${how}: ${line.title.toLowerCase()}, ${line.asked}.`),
    ...stops.map((stop) => `No hole of any kind is drilled. ${stop.reason}`),
    ...(placing.answer === "not-known" ? [`Its place in the bay was not looked at. ${placing.sentence}`] : []),
    ...(margin.verdict === "not-computed"
      ? ["What its feet do to the slab is not computed here: keep them off joints, cracks and edges."]
      : []),
    "It is used within its maker's limits of load, height and floor; write down that the customer was told.",
  ];
  const moved = placing.answer === "move" && placing.proposed !== undefined && job.position !== undefined;
  return {
    ...common,
    outcome: moved ? "shift" : open.length > 0 || margin.verdict === "not-computed" ? "accept-if" : "accept",
    sentence: moved
      ? placing.sentence
      : open.length > 0
        ? `It needs no anchors: accept if ${open.map((line) => `${line.title.toLowerCase()} (${line.asked})`).join(", ")} ${open.length === 1 ? "is" : "are"} shown${how}.`
        : "It needs no anchors, and the floor meets its maker's page.",
    reasons: open.map((line) => `Not shown: ${said(line)}.`),
    conditions,
  };
};

/** Lines of the page that speak of anchors or of the place: that is found by the feet. */
const OF_THE_PLACE = new Set(["edge", "joint", "crack", "footing", "under-plate", "pipe"]);

const said = ({ title, asked, found }: PageLine): string => `${title}: asked ${asked}, found ${found}`;

const verdictOf = (lines: readonly PageLine[]): PageAnswer["verdict"] =>
  lines.some(({ result }) => result === "fails")
    ? "fails"
    : lines.some(({ result }) => result === "not-shown")
      ? "not-shown"
      : "meets";

const stopped = ({ outcome, reason, next }: Stop): LooseJudgement => ({
  outcome,
  sentence: reason,
  reasons: [reason],
  conditions: [next],
  page: "not-judged",
  margin: "not-computed",
  placing: undefined,
});

const unread = (): LooseJudgement => ({
  outcome: "hold",
  sentence: "Hold: no line of its maker's floor page is known.",
  reasons: ["No line of the maker's floor page is known."],
  conditions: ["Read the floor page of this lift's manual and enter its lines."],
  page: "not-judged",
  margin: "not-computed",
  placing: undefined,
});
