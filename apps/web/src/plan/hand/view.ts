import type { Point, Rect } from "@floorworthy/engine/geometry";
import { useCallback, useEffect, useState } from "react";

/** The part of the plan in sight, mm. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Pixels of the board. */
export interface BoardSize {
  readonly width: number;
  readonly height: number;
}

/** Height of the plan's letters on the screen, px. */
const PIXELS = 12.5;

/** Room for names and dimensions before and after the bay, in letters. */
const [BEFORE, AFTER] = [6, 2];

/** How large letters must be on the plan, mm, to have the same size on every screen and however near one looks. */
export const lettersOf = (view: View, size: BoardSize): number =>
  PIXELS * Math.max(view.width / size.width, view.height / size.height);

/** The whole bay in the middle of the board, with room for what is written around it. */
export const viewAround = ({ x0, y0, x1, y1 }: Rect, size: BoardSize): View => {
  const room = (BEFORE + AFTER) * PIXELS;
  const [width, height] = [Math.max(x1 - x0, 500), Math.max(y1 - y0, 500)];
  const mm = Math.max(width / Math.max(size.width - room, 60), height / Math.max(size.height - room, 60));
  const [across, along] = [size.width * mm, size.height * mm];
  const before = BEFORE * PIXELS * mm;
  const spare = (total: number, bay: number) => (total - bay - room * mm) / 2;
  return {
    x: x0 - before - spare(across, width),
    y: y0 - before - spare(along, height),
    width: across,
    height: along,
  };
};

/** Nearer (factor < 1) or farther, about a place that stays where it is. */
export const zoomed = (view: View, factor: number, about: Point): View => {
  const f = Math.min(Math.max(view.width * factor, 300), 300_000) / view.width;
  return {
    x: about.x - (about.x - view.x) * f,
    y: about.y - (about.y - view.y) * f,
    width: view.width * f,
    height: view.height * f,
  };
};

const holdsAll = (view: View, { x0, y0, x1, y1 }: Rect): boolean =>
  x0 >= view.x && y0 >= view.y && x1 <= view.x + view.width && y1 <= view.y + view.height;

/** The view shows the whole bay until somebody looks elsewhere; it does not move while the bay still fits, or is in hand. */
export const useView = (whole: Rect, size: BoardSize) => {
  const { width, height } = size;
  const key = JSON.stringify(whole);
  const [view, setView] = useState(() => viewAround(whole, size));
  const [touched, setTouched] = useState<"fits" | "moved">("fits");
  const [hands, setHands] = useState<"free" | "full">("free");
  useEffect(() => {
    if (touched === "moved" || hands === "full") return;
    const bay = JSON.parse(key) as Rect;
    const fitted = viewAround(bay, { width, height });
    setView((before) => {
      const sameShape = Math.abs(before.width / before.height - width / height) < 0.01;
      const muchSmaller = fitted.width < 0.6 * before.width;
      return sameShape && holdsAll(before, bay) && !muchSmaller ? before : fitted;
    });
  }, [key, touched, hands, width, height]);
  const look = useCallback((change: (view: View) => View) => {
    setTouched("moved");
    setView(change);
  }, []);
  const fit = useCallback(() => {
    setTouched("fits");
    setView(viewAround(JSON.parse(key), { width, height }));
  }, [key, width, height]);
  return { view, look, fit, setHands };
};
