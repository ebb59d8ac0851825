import { distance } from "@floorworthy/engine/geometry";
import { type Field, group, list, name, outline, outlineNeeded, point, quantity, required } from "../fields/index.ts";
import type { Bay, Door, Position, Wall } from "../job.ts";
import { report } from "../reading/place.ts";

const ends = { from: required(point("one end")), to: required(point("the other end")) };

const wall = group<Wall>("a wall", "a wall", { name: name("its name"), ...ends });

const door = group<Door>("a door", "a door", {
  name: name("its name"),
  ...ends,
  height: quantity("length", "its clear height"),
});

const standing = (what: string, doc: string) =>
  group<Bay["posts"][number]>(what, doc, {
    name: name("its name"),
    outline: outlineNeeded("its outline, or {width, depth} with corner or centre"),
  });

const written = outline("the slab's plan: {width, depth} from the left and back wall, or its corners");

/** Read before everything that is measured in the bay. */
const bayOutline: typeof written = {
  ...written,
  read: (node, place) => {
    const read = written.read(node, place);
    place.desk.outline = read;
    return read;
  },
};

export const bayForm = group<Bay>(
  "the bay",
  "the room around the lift; x from the left wall, y from the back wall toward the door",
  {
    outline: bayOutline,
    walls: list("walls", wall, { most: 60 }),
    doors: list("doors", door, { most: 20 }),
    posts: list("columns of the building", standing("a post", "a column of the building"), { most: 60 }),
    ceiling: quantity("length", "lowest clear height over the lift"),
    walkway: quantity("length", "way to keep free at the back wall", { sign: "not-negative" }),
    obstacles: list(
      "things on the floor that stay",
      standing("an obstacle", "a bench, stair or other thing that stays"),
      { most: 60 },
    ),
  },
);

const columns = group<Position>("the columns", "where the centres of the two columns are wanted", {
  left: required(point("the left column's centre")),
  right: required(point("the right column's centre")),
});

export const columnsForm: Field<Position | undefined> = {
  ...columns,
  absent: () => undefined,
  read: (node, place) => {
    const before = place.desk.issues.length;
    const position = columns.read(node, place);
    if (place.desk.issues.length > before) return undefined;
    if (distance(position.left, position.right) >= 1) return position;
    report(place, node, "columns-coincide", {
      message: "Both columns stand at the same place.",
      hint: "Correct left or right.",
    });
    return undefined;
  },
};
