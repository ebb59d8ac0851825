import { isScalar } from "yaml";
import type { Basis } from "../fact.ts";
import type { Entry } from "../fields/entries.ts";
import {
  choice,
  type Field,
  type Fields,
  group,
  list,
  name,
  outline,
  point,
  quantity,
  required,
  text,
  word,
} from "../fields/index.ts";
import type { Lift, LiftBase, MakerReaction, Support } from "../lift.ts";
import { anchorsForm } from "./anchors-form.ts";
import { floorPageForm } from "./floor-page-form.ts";

const base = group<LiftBase>("the base plate", "the base plate of one column", {
  outline: outline("its outline in u and v about the column's centroid; {width, depth} is centred, width along u", {
    axes: "lift",
    origin: "centre",
  }),
  thickness: quantity("length", "thickness of the steel"),
});

const reaction = group<MakerReaction>("a maker's reaction", "a load the maker states for one column", {
  name: name("what case it is"),
  P: quantity("force", "downward force"),
  Min: quantity("moment", "moment that presses the side toward the vehicle", { sign: "any" }),
  Mfa: quantity("moment", "moment that presses the side toward the door", { sign: "any" }),
  Vu: quantity("force", "shear toward the vehicle", { sign: "any" }),
  Vv: quantity("force", "shear toward the door", { sign: "any" }),
});

const support = group<Support>("a support", "a post, frame or foot of a lift that is not two-post", {
  id: name("its name"),
  at: required(point("its place from the lift's origin, half-way between columns.left and columns.right")),
  outline: outline("what stands on the floor, about its place", { origin: "centre" }),
  column: text("the column it is a foot of, for mobile columns", 60),
  share: quantity("number", "its share of the lifted weight"),
  P: quantity("force", "downward force"),
  Mx: quantity("moment", "moment about the axis across the vehicle", { sign: "any" }),
  My: quantity("moment", "moment about the axis along the vehicle", { sign: "any" }),
});

const liftFields: Fields<Lift> = {
  name: required(name("the lift's name and model")),
  kind: required(
    word(
      {
        "two-post": "two columns with arms",
        "one-post": "one column",
        "four-post": "four posts with runways",
        scissor: "scissor frames",
        "mobile-columns": "columns on wheels",
        other: "anything else",
      },
      "what kind of lift",
      "other",
    ),
  ),
  manual: choice(
    { "in-hand": "the manual with its floor page is here", missing: "nobody has it" },
    "is the maker's manual in hand",
  ),
  edition: text("edition or date of the manual", 100),
  fixing: choice(
    { anchored: "bolted to the floor", loose: "stands or is moved about without anchors, as its maker allows" },
    "how it is held to the floor",
  ),
  top: choice(
    {
      "overhead-tied": "a beam overhead joins the columns",
      "free-standing": "nothing joins them overhead; a plate may run on the floor",
    },
    "what holds the tops of the columns",
  ),
  arms: choice({ symmetric: "columns face each other", asymmetric: "columns are turned" }, "how the arms stand"),
  columnTurn: quantity("angle", "how far asymmetric columns are turned about their axis", { sign: "not-negative" }),
  rated: quantity("force", "rated load", { usual: [4448, 450_000] }),
  columnWeight: quantity("force", "weight of one column with carriage and arms"),
  spacing: quantity("length", "between the centroids of the columns"),
  tieHeight: quantity("length", "height of the overhead beam"),
  overallHeight: quantity("length", "height over all"),
  overallWidth: quantity("length", "width over all"),
  pickupHeight: quantity("length", "carriage centre above the floor when the vehicle leaves the ground"),
  fullHeight: quantity("length", "carriage centre above the floor at full rise"),
  reachCar: quantity("length", "from the column's centroid to the pads under a car's sills, across the vehicle"),
  reachTruck: quantity(
    "length",
    "from the column's centroid to the pads under a frame truck's rails, across the vehicle",
  ),
  padSpacing: quantity("length", "between front and rear pads, along the vehicle"),
  columnInertia: quantity("fourth-power-length", "second moment of area of a column about the axis along the vehicle"),
  base,
  anchors: anchorsForm,
  asks: floorPageForm,
  reactions: list("loads the maker states for one column; they replace our statics", reaction, { most: 20 }),
  supports: list("posts, frames or feet of a lift that is not two-post", support, { most: 24 }),
};

const scalar = (entry: Entry | undefined): string | undefined =>
  isScalar(entry?.value) ? String(entry.value.value) : undefined;

/** With the manual in hand its figures are documented; without it somebody said them. */
const sheetBasis = (entries: ReadonlyMap<string, Entry>): Basis => {
  if (scalar(entries.get("manual")) !== "in-hand") return { kind: "stated" };
  const edition = scalar(entries.get("edition"));
  return {
    kind: "documented",
    document: edition === undefined ? "the maker's manual" : `the maker's manual, ${edition}`,
  };
};

export const liftForm: Field<Lift> = required(
  group<Lift>("a lift", "the lift, as its maker's sheet describes it", liftFields, { basis: sheetBasis }),
);
