import type { Units } from "../../work/messages.ts";
import { type Addition, additions } from "./additions.ts";
import type { Thing } from "./things.ts";

/** What is drawn, measuring, how near one looks, and whether the hand holds on to round figures. */
export const PlanTools = (props: {
  readonly hand: "writes" | "only-looks";
  readonly things: readonly Thing[];
  readonly tool: Addition | "measure" | undefined;
  readonly onTool: (tool: Addition | "measure" | undefined) => void;
  readonly onPut: (what: Addition) => void;
  readonly onZoom: (factor: number) => void;
  readonly onWhole: () => void;
  /** undefined: there is no lift to look at */
  readonly onLift: (() => void) | undefined;
  readonly snap: "snaps" | "free";
  readonly onSnap: (snap: "snaps" | "free") => void;
  readonly units: Units;
}) => {
  const { hand, things, tool, onTool, onPut, onZoom, onWhole, onLift, snap, onSnap, units } = props;
  const drawn = tool && tool !== "measure" ? tool : undefined;
  return (
    <div className="plan-tools" role="toolbar" aria-label="Draw and look">
      {hand === "writes" && (
        <label>
          Draw{" "}
          <select
            value={drawn?.title ?? ""}
            onChange={({ target }) => onTool(additions.find(({ title }) => title === target.value))}
          >
            <option value="">nothing</option>
            {additions.map(({ title, kind }) => (
              <option key={title} value={title}>
                {kind === "bay" && things.some((each) => each.kind === "bay") ? "the slab anew" : title}
              </option>
            ))}
          </select>
        </label>
      )}
      {drawn && (
        <button type="button" onClick={() => onPut(drawn)}>
          Put it in the middle
        </button>
      )}
      <button
        type="button"
        aria-pressed={tool === "measure"}
        onClick={() => onTool(tool === "measure" ? undefined : "measure")}
      >
        Measure
      </button>
      <span className="plan-zoom">
        <button type="button" aria-label="nearer" onClick={() => onZoom(1 / 1.3)}>
          +
        </button>
        <button type="button" aria-label="farther" onClick={() => onZoom(1.3)}>
          −
        </button>
        <button type="button" onClick={onWhole}>
          All
        </button>
        {onLift && (
          <button type="button" onClick={onLift}>
            The lift
          </button>
        )}
      </span>
      <label>
        <input
          type="checkbox"
          checked={snap === "snaps"}
          onChange={({ target }) => onSnap(target.checked ? "snaps" : "free")}
        />{" "}
        whole {units === "si" ? "centimetres" : "inches"}
      </label>
    </div>
  );
};

/** What the hand is to do next, in words; it keeps its line when there is nothing to say. */
export const toolWords = (
  tool: Addition | "measure" | undefined,
  chosen: Thing | undefined,
  things: readonly Thing[],
): string => {
  if (tool === "measure") return "Draw from one place to another, or press Enter on one thing and then on another.";
  if (tool)
    return tool.drawn === "place" || tool.drawn === "lift"
      ? `Press where the ${tool.title} is.`
      : `Draw the ${tool.title} from one ${tool.drawn === "area" ? "corner to the other" : "end to the other"}.`;
  if (things.length === 0)
    return "Nothing is drawn yet. Begin with the slab: choose it under Draw, or type its sizes under Position.";
  if (!chosen) return "Press a thing to choose it, drag it to move it. The wheel or two fingers look nearer.";
  return chosen.kind === "lift"
    ? "Arrow keys move it, with Shift by more; T turns it."
    : "Arrow keys move it, with Shift by more.";
};
