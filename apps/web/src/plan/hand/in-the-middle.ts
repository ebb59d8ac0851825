import type { WrittenTree } from "@floorworthy/job/listing";
import type { Units } from "../../work/messages.ts";
import { additions } from "./additions.ts";
import { rectOf } from "./boxes.ts";
import { thingsOf } from "./things.ts";

const usualBay = { x0: 0, y0: 0, x1: 7315, y1: 7315 };

/** The job with the columns across the middle of its bay, which is drawn 24 ft square where nothing is known of it. */
export const inTheMiddle = (text: string, tree: WrittenTree, spacing: number, units: Units): string => {
  const bay = thingsOf(tree).find(({ kind }) => kind === "bay");
  const { x0, x1, y0, y1 } = bay ? rectOf(bay.points) : usualBay;
  const put = (kind: "bay" | "lift", a: number, b: number, c: number, d: number) => (file: string) =>
    additions
      .find((each) => each.kind === kind)!
      .write(
        [
          { x: a, y: b },
          { x: c, y: d },
        ],
        1,
        units,
      )(file);
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const stood = put("lift", x - spacing / 2, y, x + spacing / 2, y);
  return bay ? stood(text) : stood(put("bay", x0, y0, x1, y1)(text));
};
