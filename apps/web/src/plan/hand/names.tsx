import type { PlanLabel } from "./labels.ts";

/** The names of things on the plan. */
export const Names = ({ labels, letters }: { readonly labels: readonly PlanLabel[]; readonly letters: number }) => (
  <g className="names" fontSize={letters * 0.92}>
    {labels.map(({ path, text, at, runs }) => (
      <text
        key={path}
        textAnchor="middle"
        transform={`translate(${at.x} ${at.y})${runs === "along" ? " rotate(-90)" : ""}`}
        dy={letters * 0.33}
      >
        {text}
      </text>
    ))}
  </g>
);
