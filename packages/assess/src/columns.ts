import { convexHull } from "@floorworthy/engine/geometry";
import type { Lift } from "@floorworthy/job";
import type { PlacedBase } from "./assessment.ts";

/** A base by the name a person calls it: the left column, or a post or foot by its own name. */
export const baseName = (side: PlacedBase["side"]): string =>
  side === "left" || side === "right" ? `${side} column` : side;

/** What stands on the floor as one: the feet of a column on feet, or one base by itself. */
export interface Column {
  /** as the lift's sheet calls it; undefined for a base by itself */
  readonly name: string | undefined;
  readonly bases: readonly PlacedBase[];
}

/** The bases by the column they belong to, in the order of the sheet. */
export const columnsOf = (bases: readonly PlacedBase[], { supports }: Pick<Lift, "supports">): readonly Column[] => {
  const columns: { name: string | undefined; bases: PlacedBase[] }[] = [];
  for (const base of bases) {
    const name = supports.find(({ id }) => id === base.side)?.column;
    const known = name === undefined ? undefined : columns.find((column) => column.name === name);
    if (known) known.bases.push(base);
    else columns.push({ name, bases: [base] });
  }
  return columns;
};

/** A column's feet as one base, round all of them. */
export const asOneBase = ({ name, bases }: Column): PlacedBase =>
  bases.length === 1
    ? bases[0]!
    : {
        side: `${name} column`,
        centre: {
          x: bases.reduce((sum, { centre }) => sum + centre.x, 0) / bases.length,
          y: bases.reduce((sum, { centre }) => sum + centre.y, 0) / bases.length,
        },
        outline: convexHull(
          bases.flatMap(({ outline, anchors, centre }) =>
            outline.length > 0 ? outline : anchors.length > 0 ? anchors.map(({ at }) => at) : [centre],
          ),
        ),
        anchors: bases.flatMap(({ anchors }) => anchors),
      };
