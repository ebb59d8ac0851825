import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { shown, term } from "../facts/print.ts";
import type { StrengthFinding } from "../facts/strength.ts";
import { asks, type Line, notAsked } from "./line.ts";

const [id, title] = ["strength", "Compressive strength of the concrete"];

export const strengthLine: Line = (job, { strength }) => {
  const asked = job.lift.asks.strength;
  if (!asked.known) return notAsked(id, title);
  const { units } = job;
  const capacity = term("f'c", "least compressive strength the maker asks", asked.high, "stress", units, {
    basis: asks(asked),
  });
  const line = { id, title, asked: `at least ${shown(asked.high, "stress", units)}`, capacity };
  const weakest = strength.toSorted((a, b) => (a.shown ?? a.worst) - (b.shown ?? b.worst))[0];
  if (!weakest) return { ...line, result: "not-shown", found: "not shown", why: "Say where the columns are to stand." };
  const why = (...more: string[]): string =>
    sentences([weakest.why, ...more, ...weakest.notes, weakest.tensileNote ?? ""]);
  const capped = strength.find(
    (found) => found.shown === undefined && (found.atMost ?? Number.POSITIVE_INFINITY) < asked.high,
  );
  if (capped)
    return {
      ...line,
      result: "fails",
      found: `at most ${shown(capped.atMost!, "stress", units)}`,
      why: why("a single core under three quarters of a strength rules that strength out (ACI 318-19 26.12.6.1)"),
    };
  const open = strength.find((found) => found.shown === undefined);
  if (open && (weakest.shown === undefined || weakest.shown >= asked.high))
    return {
      ...line,
      result: "not-shown",
      found: "not shown",
      why: sentences([open.why, waysToShow(job, open), ...open.notes, open.tensileNote ?? ""]),
    };
  const counts = weakest.shown ?? weakest.worst;
  return {
    ...line,
    demand: weakest.workings,
    result: counts >= asked.high * (1 - 1e-9) ? "meets" : "fails",
    found: shown(counts, "stress", units),
    why: why(),
  };
};

/** What would show it, cheapest first. */
const waysToShow = ({ floor }: Job, { from }: StrengthFinding): string => {
  if (floor.state !== "standing") return "";
  const lost = floor.strength.tickets.known && floor.strength.tickets.value === "lost";
  const papers = lost ? "" : "the delivery tickets with the cylinder reports, or ";
  return from === "cores"
    ? `to show it: ${papers}the cores still lacking`
    : `to show it: ${papers}three cores judged by ACI 214.4R; a rebound hammer does not show it`;
};

const sentences = (parts: readonly string[]): string =>
  parts
    .filter((part) => part !== "")
    .map(capital)
    .join(". ");
