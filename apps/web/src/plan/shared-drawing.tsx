import { useLayoutEffect, useRef } from "react";

/** The drawing as it goes on paper, put on the screen: cut to what is drawn, and inked by the page's own colours. */
export const SharedDrawing = ({ svg }: { svg: string }) => {
  const board = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
    const drawing = document.importNode(root, true) as unknown as SVGSVGElement;
    for (const measure of ["width", "height"]) drawing.removeAttribute(measure);
    drawing.querySelector(":scope > rect")?.remove();
    board.current?.replaceChildren(drawing);
    const { x, y, width, height } = drawing.getBBox();
    if (width > 0) drawing.setAttribute("viewBox", `${x - 1} ${y - 1} ${width + 2} ${height + 2}`);
  }, [svg]);
  return <div className="drawn" ref={board} />;
};
