import type { Layout } from "@floorworthy/assess";
import type { BreakoutOutline } from "@floorworthy/assess/margin";
import type { Point } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { setPlain } from "@floorworthy/job/editing";
import { type KeyboardEvent, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { useForm } from "../../form/form-context.ts";
import type { OpenDocument } from "../../job/use-document.ts";
import type { Units } from "../../work/messages.ts";
import { Bases } from "./bases.tsx";
import { grown, rectOf } from "./boxes.ts";
import { ChosenThing } from "./chosen-thing.tsx";
import { isCrowded } from "./crowded.ts";
import { HandMarks } from "./hand-marks.tsx";
import { planLabels } from "./labels.ts";
import { middleOf, shift, turned } from "./move.ts";
import { Names } from "./names.tsx";
import { PlanTools, toolWords } from "./plan-tools.tsx";
import { askedBy } from "./thing-keys.ts";
import { ThingShape } from "./thing-shape.tsx";
import { type Thing, thingsOf } from "./things.ts";
import { useBoardSize } from "./use-board-size.ts";
import { useHand } from "./use-hand.ts";
import { lettersOf, useView, viewAround, zoomed } from "./view.ts";
import { WallChains } from "./wall-chains.tsx";

const emptyBay = { x0: 0, y0: 0, x1: 7300, y1: 7300 };

/** The bay in hand: draw it, take hold of anything in it, and watch the answers follow. */
export const PlanHand = (props: {
  readonly open: OpenDocument;
  readonly layout: Layout | undefined;
  readonly job: Job | undefined;
  readonly units: Units;
  /** drawn on the slab, under everything that can be held; told the size of letters */
  readonly layers: (letters: number) => ReactNode;
  readonly bodies: readonly BreakoutOutline[];
  /** `still`: a picture to look at, that scrolls with the page */
  readonly board: "in-hand" | "still";
}) => {
  const { open, layout, job, units, layers, bodies } = props;
  const { tree, hand: allowed } = useForm();
  const hand = props.board === "still" ? "only-looks" : allowed;
  const things = useMemo(() => thingsOf(tree), [tree]);
  const known = things.find(({ kind }) => kind === "bay")?.points ?? things.flatMap(({ points }) => points);
  const bay = known.length > 0 ? rectOf(known) : emptyBay;
  const [snap, setSnap] = useState<"snaps" | "free">("snaps");
  const board = useRef<SVGSVGElement>(null);
  const size = useBoardSize(board);
  const { view, look, fit, setHands } = useView(bay, size);
  const letters = lettersOf(view, size);
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
  const busy = doing.kind === "moving" || doing.kind === "bending" ? "full" : "free";
  useEffect(() => setHands(busy), [busy, setHands]);

  useEffect(() => {
    const node = props.board === "still" ? null : board.current;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const at = placeOf(event);
      look((v) => zoomed(v, event.deltaY > 0 ? 1.15 : 1 / 1.15, at));
    };
    node?.addEventListener("wheel", onWheel, { passive: false });
    return () => node?.removeEventListener("wheel", onWheel);
  });

  const inSight = { x: view.x + view.width / 2, y: view.y + view.height / 2 };
  const zoom = (factor: number) => look((v) => zoomed(v, factor, inSight));
  const remove = (path: string) => {
    open.change("", (text) => setPlain(text, path, undefined));
    choose(undefined);
  };
  const onKey = (event: KeyboardEvent, on: Thing) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const asked = askedBy(event, units);
    if (!asked) return;
    const writes = hand === "writes";
    if (asked.do === "choose" && tool === "measure") hands.measureAt(middleOf(on.points));
    else if (asked.do === "choose") choose(on.path);
    else if (asked.do === "leave") {
      hands.stop();
      setTool(undefined);
      choose(undefined);
    } else if (asked.do === "nearer") zoom(1 / 1.3);
    else if (asked.do === "farther") zoom(1.3);
    else if (asked.do === "whole") fit();
    else if (asked.do === "move" && writes) hands.settle(on, shift(on.points, asked.by), `keys ${on.path}`);
    else if (asked.do === "turn" && writes && on.kind === "lift")
      hands.settle(on, turned(on.points, Math.PI / 2), `turn ${on.path}`);
    else if (asked.do === "remove" && writes && on.path.endsWith("]")) remove(on.path);
    else return;
    event.preventDefault();
  };

  const pointsOf = (each: Thing) =>
    held && (doing.kind === "moving" || doing.kind === "bending") && doing.path === each.path ? held : each.points;
  const lift = things.find(({ kind }) => kind === "lift");
  const shownThings = things.map((each) => ({ ...each, points: pointsOf(each) }));
  const labels = planLabels(shownThings, letters);
  const position = job?.position;
  const columns = lift ? pointsOf(lift) : (layout?.bases.map(({ centre }) => centre) ?? []);
  const drawn = (each: Thing) => (
    <g
      key={each.path}
      data-path={each.path}
      role="button"
      tabIndex={0}
      aria-label={each.label.includes(each.kind) ? each.label : `${each.kind} ${each.label}`}
      aria-pressed={each.path === chosen}
      onFocus={() => choose(each.path)}
      onKeyDown={(event) => onKey(event, each)}
    >
      <ThingShape
        thing={each}
        points={pointsOf(each)}
        letters={letters}
        chosen={each.path === chosen}
        figure={isCrowded(each, things, letters) ? "waits" : "shown"}
      />
      {each.kind === "lift" && layout && (
        <Bases
          layout={layout}
          from={position && [position.left, position.right]}
          to={pointsOf(each)}
          bodies={bodies}
          letters={letters}
        />
      )}
    </g>
  );
  return (
    <div className="plan-hand" data-board={props.board}>
      {props.board === "in-hand" && (
        <PlanTools
          hand={hand}
          things={things}
          tool={tool}
          onTool={(chosenTool) => {
            hands.stop();
            setTool(chosenTool);
          }}
          onPut={(what) => {
            hands.drawAt(what, inSight);
            setTool(undefined);
          }}
          onZoom={zoom}
          onWhole={fit}
          onLift={columns.length > 0 ? () => look(() => viewAround(grown(rectOf(columns), 700), size)) : undefined}
          snap={snap}
          onSnap={setSnap}
          units={units}
        />
      )}
      <svg
        ref={board}
        className="plan-board"
        data-tool={tool ? "draws" : "holds"}
        role="group"
        aria-label="The bay from above. Each thing in it can be chosen and moved with the arrow keys."
        viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
        fontSize={letters}
        {...(props.board === "in-hand" && {
          onPointerDown: hands.begin,
          onPointerMove: hands.move,
          onPointerUp: hands.end,
          onPointerCancel: hands.end,
        })}
      >
        {things.filter(({ kind }) => kind === "bay").map(drawn)}
        <g className="plan-layers">{layers(letters)}</g>
        {things.filter(({ kind }) => kind !== "bay").map(drawn)}
        {lift === undefined && layout && layout.bases.length > 0 && (
          <Bases layout={layout} from={undefined} to={undefined} bodies={bodies} letters={letters} />
        )}
        <Names labels={labels} letters={letters} />
        {things.length > 0 && <WallChains bay={bay} columns={columns} letters={letters} units={units} />}
        <HandMarks
          doing={doing}
          thing={thing && { ...thing, points: pointsOf(thing) }}
          hand={hand}
          bay={bay}
          letters={letters}
          units={units}
        />
      </svg>
      {props.board === "in-hand" && (
        <>
          <p className="plan-says quiet" role="status">
            {toolWords(tool, thing, things)}
          </p>
          <ChosenThing
            open={open}
            thing={thing}
            onTurn={(angle) => thing && hands.settle(thing, turned(thing.points, angle), `turn ${thing.path}`)}
            onRemove={remove}
          />
        </>
      )}
    </div>
  );
};
