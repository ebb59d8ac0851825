import { isMap } from "yaml";
import { choice, type Field, group, liftAxes, list, point, quantity, required, text } from "../fields/index.ts";
import { readPoint } from "../fields/point.ts";
import type { AnchorHole, AnchorProductSheet, LiftAnchors } from "../lift.ts";
import { printPath, report } from "../reading/place.ts";

const longHole = group<{ readonly id: string | undefined; readonly at: AnchorHole["at"] }>(
  "a hole",
  "a hole with its name",
  {
    id: text("its name on the sheet", 20),
    at: required(point("its centre [u, v]", liftAxes)),
  },
);

const shortHole = point("its centre [u, v]; it is named by its number", liftAxes);

/** A hole of the base plate: `[u, v]`, or `{ id, at: [u, v] }`. */
const hole: Field<AnchorHole> = {
  shape: { kind: "either", of: [shortHole, longHole] },
  doc: "one hole of the base plate",
  need: "optional",
  absent: () => ({ id: "", at: { x: 0, y: 0 } }),
  read: (node, place) => {
    const number = String(Number(place.path.at(-1) ?? 0) + 1);
    const short = !isMap(node) || node.has("u") || node.has("v");
    if (short) return { id: number, at: readPoint(node, place, liftAxes) ?? { x: 0, y: 0 } };
    const { id, at } = longHole.read(node, place);
    return { id: id || number, at };
  },
};

const holeList = list(
  "the holes of one base, as [u, v] or {id, at}; u toward the vehicle, v toward the door, from the column's centroid",
  hole,
  { most: 40 },
);

const holes: Field<readonly AnchorHole[]> = {
  ...holeList,
  read: (node, place) => {
    const read = holeList.read(node, place);
    const twice = read.find(({ id }, i) => read.some((other, j) => j < i && other.id === id));
    if (twice)
      report(place, node, "duplicate-name", {
        got: twice.id,
        message: `Two items of ${printPath(place.path)} are named "${twice.id}".`,
        hint: "Give each its own name.",
      });
    return read;
  },
};

const product = group<AnchorProductSheet>("an anchor's sheet", "the anchor, from its own sheet", {
  sheet: choice(
    { "in-hand": "the anchor's sheet is in hand", missing: "nobody has it" },
    "is the anchor's own sheet in hand",
  ),
  kind: choice(
    {
      expansion: "torque-set wedge anchor",
      sleeve: "torque-set sleeve anchor",
      screw: "screw anchor",
      undercut: "undercut anchor",
      adhesive: "rod in adhesive",
      "cast-in": "bolt cast into the concrete",
    },
    "what kind of anchor",
  ),
  diameter: quantity("length", "diameter of the bolt"),
  length: quantity("length", "length of the anchor over all"),
  nominalEmbedment: quantity("length", "hnom: from the concrete's surface to the anchor's end after setting"),
  effectiveEmbedment: quantity("length", "hef: from the concrete's surface to where the anchor bears"),
  holeDiameter: quantity("length", "diameter of the drill bit"),
  holeDepth: quantity("length", "depth of the drilled hole"),
  category: choice(
    { "1": "least sensitive to setting", "2": "medium", "3": "most sensitive" },
    "anchor category of its qualification",
  ),
  minimumThickness: quantity("length", "least thickness of the concrete"),
  minimumEdge: quantity("length", "least distance to an edge"),
  minimumSpacing: quantity("length", "least distance between anchors"),
  criticalEdge: quantity("length", "cac: edge distance from which splitting does not count"),
  pulloutCracked: quantity("force", "pull-out strength of one anchor in cracked concrete (5 % fractile)"),
  pulloutUncracked: quantity("force", "pull-out strength of one anchor in uncracked concrete (5 % fractile)"),
  steelArea: quantity("area", "stress area of the bolt"),
  steelStrength: quantity("stress", "futa: tensile strength of the steel"),
  steelYield: quantity("stress", "fya: yield strength of the steel"),
  ductile: choice(
    { ductile: "stretches before it breaks", brittle: "does not" },
    "does the steel stretch before it breaks",
  ),
});

export const anchorsForm = group<LiftAnchors>("the anchors", "anchors of one base", {
  holes,
  product,
  torque: quantity("moment", "torque the nut is set to"),
  shimLimit: quantity("length", "highest stack of shims without grout", { sign: "not-negative" }),
  firstRound: quantity("time", "the maker's first round of the nuts, after setting"),
  roundEvery: quantity("time", "the maker's time from one round of the nuts to the next"),
  movementLimit: quantity("length", "the maker's limit of an anchor's take-up or rise"),
});
