/** Where the bars of one direction lie, keeping clear of the drill. Lengths mm. */

/** Across the bars: from..to must stay free (an anchor line and the reach of the drill to both sides). */
export interface ClearWindow {
  readonly from: number;
  readonly to: number;
}

export interface BarLayout {
  /** places of the bars, from one side of the concrete */
  readonly places: readonly number[];
  /** gaps wider than the spacing, which a window forces */
  readonly wide: readonly ClearWindow[];
}

/**
 * Bars no farther apart than `spacing` over a width, `cover` clear at both sides (to the bar's axis), none inside a
 * window: a bar on each side of every window, the rest evenly between.
 */
export const barLayout = (
  width: number,
  spacing: number,
  cover: number,
  windows: readonly ClearWindow[] = [],
): BarLayout => {
  const closed = merged(windows, cover, width - cover);
  const free: ClearWindow[] = [];
  let at = cover;
  for (const window of closed) {
    if (window.from >= at) free.push({ from: at, to: window.from });
    at = Math.max(at, window.to);
  }
  if (at <= width - cover) free.push({ from: at, to: width - cover });
  const places = free.flatMap(({ from, to }) => {
    const gaps = Math.max(0, Math.ceil((to - from) / spacing - 1e-9));
    return gaps === 0 ? [from] : Array.from({ length: gaps + 1 }, (_, i) => from + ((to - from) * i) / gaps);
  });
  const wide = places
    .slice(1)
    .map((to, i) => ({ from: places[i]!, to }))
    .filter((gap) => gap.to - gap.from > spacing + 1e-6);
  return { places, wide };
};

const merged = (windows: readonly ClearWindow[], low: number, high: number): readonly ClearWindow[] => {
  const list: ClearWindow[] = [];
  for (const w of windows.filter((v) => v.to > low && v.from < high).toSorted((p, q) => p.from - q.from)) {
    const last = list.at(-1);
    if (last && w.from <= last.to) list[list.length - 1] = { from: last.from, to: Math.max(last.to, w.to) };
    else list.push(w);
  }
  return list;
};

/** Length of steel for one run, and the pieces it is cut from. */
export interface BarRun {
  /** laps included, mm */
  readonly length: number;
  readonly pieces: number;
  readonly laps: number;
}

/** One run of bar over `length`, from stock of `stock` mm lapped by `lap` mm. */
export const barRun = (length: number, stock: number, lap: number): BarRun => {
  const pieces = length <= stock ? 1 : Math.ceil((length - lap) / (stock - lap) - 1e-9);
  return { length: length + (pieces - 1) * lap, pieces, laps: pieces - 1 };
};
