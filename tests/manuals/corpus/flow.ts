/** Pages filled from the top, with a running head and a printed page number. */
import type { Pen, SetOptions } from "./pen.ts";

export interface Flow {
  readonly pen: Pen;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  y: number;
  page: number;
  readonly head: string;
  readonly foot: (page: number) => string;
}

export const startFlow = (
  pen: Pen,
  margins: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  head: string,
  foot: (page: number) => string = (page) => `- ${page} -`,
): Flow => ({
  pen,
  left: margins.left,
  right: pen.page.size[0] - margins.right,
  top: margins.top,
  bottom: pen.page.size[1] - margins.bottom,
  y: Number.POSITIVE_INFINITY,
  page: 0,
  head,
  foot,
});

export const freshPage = (flow: Flow): void => {
  flow.pen.sheet();
  flow.page += 1;
  if (flow.head) flow.pen.line(flow.head, flow.left, flow.top - 28, { size: 8 });
  flow.pen.line(flow.foot(flow.page), (flow.left + flow.right) / 2 - 10, flow.bottom + 18, { size: 8 });
  flow.y = flow.top;
};

export const need = (flow: Flow, height: number): void => {
  if (flow.y + height > flow.bottom) freshPage(flow);
};

/** A paragraph over the whole width, kept on one page. */
export const para = (
  flow: Flow,
  text: string,
  options: SetOptions & { readonly indent?: number; readonly after?: number } = {},
): void => {
  const { size = 10, indent = 0, after = 5 } = options;
  const width = flow.right - flow.left - indent;
  const lines = Math.ceil(flow.pen.width(text, options) / width + 0.4);
  need(flow, lines * size * (options.leading ?? 1.25));
  flow.y = flow.pen.set(text, flow.left + indent, flow.y, width, options) + after;
};

/** Cells of one row; each wraps in its own width. Returns nothing; moves the flow. */
export const row = (
  flow: Flow,
  cells: readonly string[],
  edges: readonly number[],
  options: SetOptions & { readonly lines?: "ruled" | "open"; readonly pad?: number } = {},
): void => {
  const { size = 9, pad = 4 } = options;
  const heights = cells.map((text, i) => {
    const width = edges[i + 1]! - edges[i]! - 2 * pad;
    return Math.max(1, Math.ceil(flow.pen.width(text, { ...options, size }) / width + 0.25)) * size * 1.2;
  });
  const height = Math.max(...heights) + 2 * pad;
  need(flow, height);
  let low = flow.y;
  cells.forEach((text, i) => {
    if (text)
      low = Math.max(
        low,
        flow.pen.set(text, edges[i]! + pad, flow.y + pad, edges[i + 1]! - edges[i]! - 2 * pad, {
          ...options,
          size,
          leading: 1.2,
        }),
      );
  });
  const end = low + pad;
  if (options.lines !== "open") {
    flow.pen.rule(edges[0]!, flow.y, edges.at(-1)!, flow.y);
    flow.pen.rule(edges[0]!, end, edges.at(-1)!, end);
    for (const x of edges) flow.pen.rule(x, flow.y, x, end);
  }
  flow.y = end;
};
