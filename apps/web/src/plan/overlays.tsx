import type { Region } from "@floorworthy/engine/placement";
import { pointList } from "./frame.ts";

/** Where the lift's middle may be: hatched, so that it reads without colour too. */
export const Feasible = ({ regions }: { regions: readonly Pick<Region, "outline" | "holes">[] }) => (
  <g className="feasible">
    <defs>
      <pattern id="may-stand" width="90" height="90" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V90" />
      </pattern>
    </defs>
    {regions.map(({ outline, holes }) => (
      <path
        key={pointList(outline)}
        d={[outline, ...holes].map((ring) => `M${pointList(ring).replaceAll(" ", "L")}Z`).join("")}
      />
    ))}
  </g>
);
