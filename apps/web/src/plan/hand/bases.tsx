import type { Layout } from "@floorworthy/assess";
import type { BreakoutOutline } from "@floorworthy/assess/margin";
import type { Point } from "@floorworthy/engine/geometry";
import { pointList, ringsPath } from "../frame.ts";
import { middleOf } from "./move.ts";

/** The base plates where the hand holds them: as last worked out, carried along by the move since then. */
export const Bases = (props: {
  readonly layout: Layout;
  /** the column centres the layout was worked out with */
  readonly from: readonly [Point, Point] | undefined;
  readonly to: readonly Point[] | undefined;
  readonly bodies: readonly BreakoutOutline[];
  readonly letters: number;
}) => {
  const { layout, from, to, bodies, letters } = props;
  const carried = from && to?.length === 2 ? carriedBy(from, to as [Point, Point]) : undefined;
  return (
    <g transform={carried} className="lift-bases">
      {bodies.map(({ side, anchors, together }) => (
        <g key={side} className="bodies">
          {anchors.map(({ id, outline }) => (
            <polygon key={id} className="body-of-one" points={pointList(outline)} />
          ))}
          <path className="bodies-together" d={ringsPath(together)} />
        </g>
      ))}
      {layout.bases.map(({ side, outline, centre, anchors }) => (
        <g key={side}>
          <polygon className="base" points={pointList(outline)} />
          {anchors.map(({ id, at }) => (
            <circle key={id} className="anchor" cx={at.x} cy={at.y} r={Math.min(letters * 0.3, 20)} />
          ))}
          <path
            className="centre"
            d={`M${centre.x - letters} ${centre.y}h${2 * letters}M${centre.x} ${centre.y - letters}v${2 * letters}`}
          />
        </g>
      ))}
    </g>
  );
};

const carriedBy = (from: readonly [Point, Point], to: readonly [Point, Point]): string => {
  const [a, b] = [middleOf(from), middleOf(to)];
  const angleOf = ([p, q]: readonly [Point, Point]) => Math.atan2(q.y - p.y, q.x - p.x);
  const angle = ((angleOf(to) - angleOf(from)) * 180) / Math.PI;
  return `translate(${b.x} ${b.y}) rotate(${angle}) translate(${-a.x} ${-a.y})`;
};
