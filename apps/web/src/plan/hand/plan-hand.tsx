import type { Layout } from "@floorworthy/assess";
import type { Point, Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { setPlain } from "@floorworthy/job/editing";
import { type KeyboardEvent, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { useForm } from "../../form/form-context.ts";
import type { OpenDocument } from "../../job/use-document.ts";
import type { Units } from "../../work/messages.ts";
import { additions } from "./additions.ts";
import { Bases } from "./bases.tsx";
import { ChosenThing } from "./chosen-thing.tsx";
import { middleOf, shift, turned } from "./move.ts";
import { Measured, TapeLines } from "./tape-lines.tsx";
import { ThingShape } from "./thing-shape.tsx";
import { type Thing, thingsOf } from "./things.ts";
import { useHand } from "./use-hand.ts";
import { useView, zoomed } from "./view.ts";

const rectOf = (points: readonly Point[]): Rect =>
  points.length === 0
    ? { x0: 0, y0: 0, x1: 7300, y1: 7300 }
    : {
        x0: Math.min(...points.map(({ x }) => x)),
        y0: Math.min(...points.map(({ y }) => y)),
        x1: Math.max(...points.map(({ x }) => x)),
        y1: Math.max(...points.map(({ y }) => y)),
      };

/** The bay in hand: draw it, take hold of anything in it, and watch the answers follow. */
export const PlanHand = (props: {
  readonly open: OpenDocument;
  readonly layout: Layout | undefined;
  readonly job: Job | undefined;
  readonly units: Units;
  readonly under: ReactNode;
  readonly cones: number | undefined;
}) => {
  const { open, layout, job, units, under, cones } = props;
  const { tree, hand } = useForm();
  const things = useMemo(() => thingsOf(tree), [tree]);
  const bay = rectOf(things.find(({ kind }) => kind === "bay")?.points ?? things.flatMap(({ points }) => points));
  const { view, look, fit } = useView(bay);
  const [snap, setSnap] = useState<"snaps" | "free">("snaps");
  const board = useRef<SVGSVGElement>(null);
  const placeOf = ({ clientX, clientY }: { clientX: number; clientY: number }): Point => {
    const matrix = board.current?.getScreenCTM();
    if (!matrix) return { x: 0, y: 0 };
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
    return { x, y };
  };
  const grain = () => 1 / (board.current?.getScreenCTM()?.a ?? 0.1);
  const spacing = job?.lift.spacing.known ? job.lift.spacing.value : 3200;
  const hands = useHand({ open, things, units, hand, snap, look, placeOf, grain, spacing });
  const { doing, held, chosen, choose, tool, setTool } = hands;
  const thing = things.find(({ path }) => path === chosen);
  const letters = view.width / 46;

  useEffect(() => {
    const node = board.current;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const at = placeOf(event);
      look((v) => zoomed(v, event.deltaY > 0 ? 1.15 : 1 / 1.15, at));
    };
    node?.addEventListener("wheel", onWheel, { passive: false });
    return () => node?.removeEventListener("wheel", onWheel);
  });

  const step = units === "si" ? 10 : 25.4;
  const onKey = (event: KeyboardEvent, on: Thing) => {
    const far = event.shiftKey ? (units === "si" ? 10 : 12) : 1;
    const ways: Readonly<Record<string, Point>> = {
      ArrowLeft: { x: -step * far, y: 0 },
      ArrowRight: { x: step * far, y: 0 },
      ArrowUp: { x: 0, y: -step * far },
      ArrowDown: { x: 0, y: step * far },
    };
    const way = ways[event.key];
    if (event.key === "Enter" || event.key === " ") choose(on.path);
    else if (event.key === "Escape") choose(undefined);
    else if (hand === "only-looks") return;
    else if (way) hands.settle(on, shift(on.points, way), `keys ${on.path}`);
    else if (event.key.toLowerCase() === "t" && on.kind === "lift")
      hands.settle(on, turned(on.points, Math.PI / 2), `turn ${on.path}`);
    else if (event.key === "Delete" && on.path.endsWith("]")) {
      open.change("", (text) => setPlain(text, on.path, undefined));
      choose(undefined);
    } else return;
    event.preventDefault();
  };

  const pointsOf = (each: Thing) =>
    held && (doing.kind === "moving" || doing.kind === "bending") && doing.path === each.path ? held : each.points;
  const lift = things.find(({ kind }) => kind === "lift");
  const position = job?.position;
  const inSight = { x: view.x + view.width / 2, y: view.y + view.height / 2 };
  return (
    <div className="plan-hand">
      <div className="plan-tools" role="toolbar" aria-label="Draw and look">
        {hand === "writes" && (
          <label>
            Draw{" "}
            <select
              value={tool && tool !== "measure" ? tool.title : ""}
              onChange={({ target }) => setTool(additions.find(({ title }) => title === target.value))}
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
        {tool && tool !== "measure" && (
          <button
            type="button"
            onClick={() => {
              hands.drawAt(tool, inSight);
              setTool(undefined);
            }}
          >
            Put it in the middle
          </button>
        )}
        <button
          type="button"
          aria-pressed={tool === "measure"}
          onClick={() => {
            hands.stop();
            setTool(tool === "measure" ? undefined : "measure");
          }}
        >
          Measure
        </button>
        <span className="plan-zoom">
          <button type="button" aria-label="nearer" onClick={() => look((v) => zoomed(v, 1 / 1.3, inSight))}>
            +
          </button>
          <button type="button" aria-label="farther" onClick={() => look((v) => zoomed(v, 1.3, inSight))}>
            −
          </button>
          <button type="button" onClick={fit}>
            All
          </button>
        </span>
        <label>
          <input
            type="checkbox"
            checked={snap === "snaps"}
            onChange={({ target }) => setSnap(target.checked ? "snaps" : "free")}
          />{" "}
          whole {units === "si" ? "centimetres" : "inches"}
        </label>
      </div>
      {tool && (
        <p className="quiet" role="status">
          {tool === "measure"
            ? "Draw from one place to the other."
            : tool.drawn === "place" || tool.drawn === "lift"
              ? `Press where the ${tool.title} is.`
              : `Draw the ${tool.title} from one ${tool.drawn === "area" ? "corner to the other" : "end to the other"}.`}
        </p>
      )}
      <svg
        ref={board}
        className="plan-board"
        data-tool={tool ? "draws" : "holds"}
        role="group"
        aria-label="The bay from above. Each thing in it can be chosen and moved with the arrow keys."
        viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
        fontSize={letters}
        onPointerDown={hands.begin}
        onPointerMove={hands.move}
        onPointerUp={hands.end}
        onPointerCancel={hands.end}
      >
        {things.map((each) => (
          <g
            key={each.path}
            data-path={each.path}
            role="button"
            tabIndex={0}
            aria-label={`${each.kind === each.label ? "" : `${each.kind} `}${each.label}`}
            aria-pressed={each.path === chosen}
            onFocus={() => choose(each.path)}
            onKeyDown={(event) => onKey(event, each)}
          >
            <ThingShape thing={each} points={pointsOf(each)} letters={letters} chosen={each.path === chosen} />
            {each.kind === "lift" && layout && (
              <Bases
                layout={layout}
                from={position && [position.left, position.right]}
                to={pointsOf(each)}
                cones={cones}
                letters={letters}
              />
            )}
            {each.kind === "bay" && under}
          </g>
        ))}
        {thing && hand === "writes" && thing.bends === "bends" && (
          <g data-path={thing.path}>
            {pointsOf(thing).map((point, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the row
              <circle key={i} className="corner" data-corner={i} cx={point.x} cy={point.y} r={letters * 0.7} />
            ))}
          </g>
        )}
        {thing && thing.kind !== "bay" && (
          <TapeLines
            at={
              thing.kind === "lift"
                ? pointsOf(thing)[0]!
                : thing.shape === "line"
                  ? pointsOf(thing)[0]!
                  : middleOf(pointsOf(thing))
            }
            bay={bay}
            letters={letters}
            units={units}
          />
        )}
        {lift === undefined && layout && layout.bases.length > 0 && (
          <Bases layout={layout} from={undefined} to={undefined} cones={cones} letters={letters} />
        )}
        {doing.kind === "drawing" && doing.what === "measure" && (
          <Measured points={doing.points} letters={letters} units={units} />
        )}
        {doing.kind === "drawing" && doing.what !== "measure" && doing.points.length === 2 && (
          <path
            className="being-drawn"
            d={
              doing.what.drawn === "area"
                ? `M${doing.points[0]!.x} ${doing.points[0]!.y}H${doing.points[1]!.x}V${doing.points[1]!.y}H${doing.points[0]!.x}Z`
                : `M${doing.points[0]!.x} ${doing.points[0]!.y}L${doing.points[1]!.x} ${doing.points[1]!.y}`
            }
          />
        )}
      </svg>
      <ChosenThing
        open={open}
        thing={thing}
        onTurn={(angle) => thing && hands.settle(thing, turned(thing.points, angle), `turn ${thing.path}`)}
      />
    </div>
  );
};
