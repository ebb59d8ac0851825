import { type RefObject, useEffect, useState } from "react";
import type { BoardSize } from "./view.ts";

/** How large the board is on this screen. */
export const useBoardSize = (board: RefObject<SVGSVGElement | null>): BoardSize => {
  const [size, setSize] = useState<BoardSize>({ width: 560, height: 480 });
  useEffect(() => {
    const node = board.current;
    if (!node) return;
    const watcher = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      if (width > 0 && height > 0) setSize({ width, height });
    });
    watcher.observe(node);
    return () => watcher.disconnect();
  }, [board]);
  return size;
};
