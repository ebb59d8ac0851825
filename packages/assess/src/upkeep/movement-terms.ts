import { type AnchorWatch, nutTravel, type Thread } from "@floorworthy/engine/bolts";
import { fromBase, preferredUnit, shown, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { AnchorLog } from "./anchor-log.ts";
import { degrees } from "./printed.ts";
import { movementLimit } from "./watch-rules.ts";

/** How far one anchor has moved and how fast it may go on, unfolded. */
export const movementTerms = (job: Job, log: AnchorLog, thread: Thread, watch: AnchorWatch, before: number): Term[] => {
  const unit = preferredUnit("length", job.units);
  const length = (symbol: string, words: string, mm: number, rest: Partial<Term> = {}): Term => ({
    symbol,
    words,
    value: fromBase(mm, unit),
    unit,
    ...rest,
  });
  const { anchor, fromWhat, from } = log;
  const pitch = length("P", "pitch of the thread", thread.pitch, {
    clause: "ASME B1.1 or ISO 261",
    basis: thread.name,
  });
  const angles = log.rounds.flatMap(({ reading }) => (reading.turned.known ? [degrees(reading.turned.value)] : []));
  const limit = movementLimit(job);
  const since = fromWhat === "setting" ? `since the anchors were set, ${from}` : `since the first round, ${from}`;
  return [
    length("s", `take-up of the nut of ${anchor} ${since}`, watch.movement.takeUp + before, {
      formula: "Σθ/360 × P",
      worked: `(${angles.join(" + ") || "0"})/360 × ${shown(fromBase(thread.pitch, unit))}`,
      basis: "measured",
      from: [pitch],
    }),
    ...(watch.movement.rise === undefined
      ? []
      : [length("u", `rise of the stud of ${anchor} ${since}`, watch.movement.rise, { basis: "measured" })]),
    length("s_lim", "limit of take-up or rise", limit.value, { basis: limit.basis }),
    ...(watch.fit
      ? [
          length("v", `slip of ${anchor} in a year at the last pace`, watch.fit.rate * 365.25, {
            formula: "s(t) = A ln(1 + t/τ) + B ((t − t0)/(T − t0))^n, least squares; v = n B/(T − t0)",
            worked: `A ln(1 + T/τ) = ${shown(fromBase(watch.fit.both.settled, unit))}, B = ${shown(fromBase(watch.fit.both.slipped, unit))}, τ = ${shown(watch.fit.both.shape.tau)} d, t0 = ${shown(watch.fit.both.shape.onset)} d, n = ${watch.fit.both.shape.power}`,
          }),
          length(
            "v_95",
            `fastest slip of ${anchor} in a year that the readings allow (95 %)`,
            watch.fit.fastest * 365.25,
            {
              formula: "largest v whose misfit stays within χ² = 2.69 of the best",
            },
          ),
        ]
      : []),
    length("Δ", "nut travel that can just be read", nutTravel((5 * Math.PI) / 180, thread.pitch), {
      basis: "5 degrees; common practice, no source",
    }),
  ];
};
