import { SharedDrawing } from "./shared-drawing.tsx";

/** A section through the pad, or the slab under a column, to scale. */
export const SectionView = ({ svg }: { svg: string }) =>
  svg.includes("<path") || svg.includes("<poly") || svg.includes("<line") ? (
    <details className="plan-more" open>
      <summary>Section through the concrete under a column, to scale</summary>
      <SharedDrawing svg={svg} />
    </details>
  ) : null;
