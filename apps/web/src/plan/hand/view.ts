import type { Point, Rect } from "@floorworthy/engine/geometry";
import { useCallback, useEffect, useState } from "react";

/** The part of the plan in sight, mm. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const viewAround = ({ x0, y0, x1, y1 }: Rect, room = 0.12): View => {
  const pad = Math.max(x1 - x0, y1 - y0, 1000) * room;
  return { x: x0 - pad, y: y0 - pad, width: x1 - x0 + 2 * pad, height: y1 - y0 + 2 * pad };
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

export const useView = (whole: Rect) => {
  const key = JSON.stringify(whole);
  const [view, setView] = useState(() => viewAround(whole));
  const [touched, setTouched] = useState<"fits" | "moved">("fits");
  useEffect(() => {
    if (touched === "fits") setView(viewAround(JSON.parse(key)));
  }, [key, touched]);
  const look = useCallback((change: (view: View) => View) => {
    setTouched("moved");
    setView(change);
  }, []);
  const fit = useCallback(() => setTouched("fits"), []);
  return { view, look, fit };
};
