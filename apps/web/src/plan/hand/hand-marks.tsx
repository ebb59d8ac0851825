import type { Rect } from "@floorworthy/engine/geometry";
import type { Units } from "../../work/messages.ts";
import { middleOf } from "./move.ts";
import { Measured, TapeLines } from "./tape-lines.tsx";
import type { Thing } from "./things.ts";
import type { Doing } from "./use-hand.ts";

/** What the hand leaves on the plan while it works: corners to take hold of, the tape, what is being drawn or measured. */
export const HandMarks = (props: {
  readonly doing: Doing;
  readonly thing: Thing | undefined;
  readonly hand: "writes" | "only-looks";
  readonly bay: Rect;
  readonly letters: number;
  readonly units: Units;
}) => {
  const { doing, thing, hand, bay, letters, units } = props;
  const [a, b] = doing.kind === "drawing" || doing.kind === "measured" ? doing.points : [];
  const measures = doing.kind === "measured" || (doing.kind === "drawing" && doing.what === "measure");
  const boxed = doing.kind === "drawing" && doing.what !== "measure" && doing.what.drawn === "area";
  return (
    <>
      {thing && hand === "writes" && thing.bends === "bends" && (
        <g data-path={thing.path}>
          {thing.points.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the row
            <circle key={i} className="corner" data-corner={i} cx={point.x} cy={point.y} r={letters * 0.6} />
          ))}
        </g>
      )}
      {thing && thing.kind !== "bay" && thing.kind !== "lift" && (
        <TapeLines
          at={thing.shape === "line" ? thing.points[0]! : middleOf(thing.points)}
          bay={bay}
          letters={letters}
          units={units}
        />
      )}
      {measures && a && <Measured points={b ? [a, b] : [a, a]} letters={letters} units={units} />}
      {!measures && a && b && (
        <path className="being-drawn" d={`M${a.x} ${a.y}${boxed ? `H${b.x}V${b.y}H${a.x}Z` : `L${b.x} ${b.y}`}`} />
      )}
    </>
  );
};
