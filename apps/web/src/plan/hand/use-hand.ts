import type { Point } from "@floorworthy/engine/geometry";
import { type PointerEvent, useRef, useState } from "react";
import type { OpenDocument } from "../../job/use-document.ts";
import type { Units } from "../../work/messages.ts";
import type { Addition } from "./additions.ts";
import { guidesOf, shift, snapped } from "./move.ts";
import type { Thing } from "./things.ts";
import type { View } from "./view.ts";

/** What the hand is about. */
export type Doing =
  | { readonly kind: "nothing" }
  | { readonly kind: "moving"; readonly path: string; readonly from: Point; readonly points: readonly Point[] }
  | {
      readonly kind: "bending";
      readonly path: string;
      readonly index: number;
      readonly from: Point;
      readonly points: readonly Point[];
    }
  | { readonly kind: "drawing"; readonly what: Addition | "measure"; readonly points: readonly Point[] }
  | { readonly kind: "measured"; readonly points: readonly Point[] }
  | { readonly kind: "looking"; readonly from: Point };

/** How often the answer follows a hand that moves, ms. */
const FOLLOW = 120;

export interface HandOptions {
  readonly open: OpenDocument;
  readonly things: readonly Thing[];
  readonly units: Units;
  readonly hand: "writes" | "only-looks";
  readonly snap: "snaps" | "free";
  readonly look: (change: (view: View) => View) => void;
  /** a place on the screen as a place of the plan */
  readonly placeOf: (event: { readonly clientX: number; readonly clientY: number }) => Point;
  /** mm of the plan per pixel */
  readonly grain: () => number;
  readonly spacing: number;
}

/** Taking hold of things, moving, bending, drawing and measuring with mouse, finger or pen. */
export const useHand = (options: HandOptions) => {
  const { open, things, units, hand, snap, look, placeOf, grain, spacing } = options;
  const [doing, setDoing] = useState<Doing>({ kind: "nothing" });
  const [chosen, choose] = useState<string>();
  const [tool, setTool] = useState<Addition | "measure">();
  const followed = useRef(0);
  const count = useRef(0);
  const fingers = useRef(new Map<number, Point>());

  const step = units === "si" ? 10 : 25.4;
  const settle = (thing: Thing, moved: readonly Point[], words: string) => open.change(words, thing.put(moved, units));

  const follow = (thing: Thing, moved: readonly Point[]) => {
    const now = performance.now();
    if (now - followed.current < FOLLOW) return;
    followed.current = now;
    settle(thing, moved, `hand ${count.current} ${thing.path}`);
  };

  const rounded = (point: Point): Point =>
    snap === "free"
      ? point
      : {
          x: point.x + snapped([point], { x: 0, y: 0 }, step, grain() * 8, guidesOf(things, "")).x,
          y: point.y + snapped([point], { x: 0, y: 0 }, step, grain() * 8, guidesOf(things, "")).y,
        };

  const begin = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (fingers.current.size > 1) return setDoing({ kind: "nothing" });
    const at = placeOf(event);
    const target = event.target instanceof Element ? event.target : undefined;
    const path = target?.closest("[data-path]")?.getAttribute("data-path") ?? undefined;
    const corner = target?.getAttribute("data-corner");
    if (tool) {
      event.currentTarget.setPointerCapture(event.pointerId);
      return setDoing({ kind: "drawing", what: tool, points: [rounded(at)] });
    }
    const thing = things.find((each) => each.path === path);
    if (!thing || (thing.kind === "bay" && chosen !== thing.path)) {
      choose(thing?.path);
      event.currentTarget.setPointerCapture(event.pointerId);
      return setDoing({ kind: "looking", from: at });
    }
    choose(thing.path);
    if (hand === "only-looks") return;
    event.currentTarget.setPointerCapture(event.pointerId);
    count.current += 1;
    setDoing(
      corner === null || corner === undefined
        ? { kind: "moving", path: thing.path, from: at, points: thing.points }
        : { kind: "bending", path: thing.path, index: Number(corner), from: at, points: thing.points },
    );
  };

  /** The points of the thing in hand, as the hand holds them now. */
  const heldAt = (event: { readonly clientX: number; readonly clientY: number; readonly altKey?: boolean }) => {
    if (doing.kind !== "moving" && doing.kind !== "bending") return undefined;
    const at = placeOf(event);
    const by = { x: at.x - doing.from.x, y: at.y - doing.from.y };
    const held = snap === "free" || event.altKey ? 0 : step;
    const guides = guidesOf(things, doing.path);
    if (doing.kind === "moving") return shift(doing.points, snapped(doing.points, by, held, grain() * 8, guides));
    const point = doing.points[doing.index]!;
    const moved = snapped([point], by, held, grain() * 8, guides);
    return doing.points.map((each, i) => (i === doing.index ? { x: each.x + moved.x, y: each.y + moved.y } : each));
  };

  const [held, setHeld] = useState<readonly Point[]>();
  const move = (event: PointerEvent<SVGSVGElement>) => {
    const before = fingers.current.get(event.pointerId);
    if (before) fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (fingers.current.size === 2 && before) return pinch(event, before);
    if (doing.kind === "looking") {
      const at = placeOf(event);
      look((view) => ({ ...view, x: view.x - (at.x - doing.from.x), y: view.y - (at.y - doing.from.y) }));
      return;
    }
    if (doing.kind === "drawing") {
      if (!before) return;
      return setDoing({ ...doing, points: [doing.points[0]!, rounded(placeOf(event))] });
    }
    const points = heldAt(event);
    if (!points || (doing.kind !== "moving" && doing.kind !== "bending")) return;
    setHeld(points);
    const thing = things.find(({ path }) => path === doing.path);
    if (thing) follow(thing, points);
  };

  const pinch = (event: PointerEvent<SVGSVGElement>, before: Point) => {
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    if (!other) return;
    const was = Math.hypot(before.x - other.x, before.y - other.y);
    const is = Math.hypot(event.clientX - other.x, event.clientY - other.y);
    if (was < 1 || is < 1) return;
    const about = placeOf({ clientX: (event.clientX + other.x) / 2, clientY: (event.clientY + other.y) / 2 });
    look((view) => {
      const f = was / is;
      return {
        x: about.x - (about.x - view.x) * f,
        y: about.y - (about.y - view.y) * f,
        width: view.width * f,
        height: view.height * f,
      };
    });
  };

  const end = (event: PointerEvent<SVGSVGElement>) => {
    fingers.current.delete(event.pointerId);
    const points = heldAt(event);
    if (points && (doing.kind === "moving" || doing.kind === "bending")) {
      const thing = things.find(({ path }) => path === doing.path);
      const still = points.every((p, i) => p.x === doing.points[i]?.x && p.y === doing.points[i]?.y);
      if (thing && !still) settle(thing, points, `hand ${count.current} ${thing.path}`);
    }
    setHeld(undefined);
    if (doing.kind === "drawing" && doing.what !== "measure") {
      write(doing.what, doing.points);
      setTool(undefined);
    }
    setDoing(
      doing.kind === "drawing" && doing.what === "measure" && doing.points.length === 2
        ? { kind: "measured", points: doing.points }
        : { kind: "nothing" },
    );
  };

  const write = (what: Addition, points: readonly Point[]) => {
    const [a, b = a] = points;
    if (!a || !b) return;
    const short = Math.hypot(b.x - a.x, b.y - a.y) < grain() * 6;
    const far =
      what.drawn === "line" || what.drawn === "area"
        ? { x: a.x + 1200, y: a.y + (what.drawn === "area" ? 1200 : 0) }
        : b;
    const count = things.filter(({ kind }) => kind === what.kind).length + 1;
    const ends =
      what.drawn === "lift"
        ? [
            { x: a.x - spacing / 2, y: a.y },
            { x: a.x + spacing / 2, y: a.y },
          ]
        : [a, short ? far : b];
    open.change("", what.write(ends, count, units));
  };

  /** A drawing begun by keyboard stands in the middle of what is in sight. */
  const drawAt = (what: Addition, middle: Point) => write(what, [rounded(middle)]);

  /** Measuring by keyboard: from one thing, then to another. */
  const measureAt = (place: Point) =>
    setDoing((before) =>
      before.kind === "drawing" && before.what === "measure"
        ? { kind: "measured", points: [before.points[0]!, place] }
        : { kind: "drawing", what: "measure", points: [place] },
    );

  return {
    doing,
    held,
    chosen,
    choose,
    tool,
    setTool,
    begin,
    move,
    end,
    settle,
    drawAt,
    measureAt,
    stop: () => setDoing({ kind: "nothing" }),
  };
};
