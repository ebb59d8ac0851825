import type { Anchor, AnchorConcrete, AnchorProduct, SlabPiece } from "./anchor-group.ts";

/** Why the anchors can't be checked, in words; undefined when they can. */
export const faultOf = (
  anchors: readonly Anchor[],
  product: AnchorProduct,
  concrete: AnchorConcrete,
  piece: SlabPiece,
): string | undefined => {
  if (anchors.length === 0) return "there is no anchor to check";
  const wild = anchors.find((a) => ![a.x, a.y, a.tension, a.shearX, a.shearY].every(Number.isFinite));
  if (wild) return `anchor ${wild.id} has a place or a load that is not a number`;
  const places = new Map<string, string>();
  for (const { id, x, y } of anchors) {
    const other = places.get(`${x},${y}`);
    if (other !== undefined) return `anchors ${other} and ${id} stand at the same place`;
    places.set(`${x},${y}`, id);
  }
  const positive: readonly (readonly [string, number | undefined])[] = [
    ["anchor diameter", product.da],
    ["effective embedment", product.hef],
    ["hole depth", product.hnom],
    ["steel area", product.Ase],
    ["steel strength", product.futa],
    ["yield strength", product.fya],
    ["pull-out strength in cracked concrete", product.NpCracked],
    ["pull-out strength in uncracked concrete", product.NpUncracked],
    ["k for cracked concrete", product.kCracked],
    ["k for uncracked concrete", product.kUncracked],
    ["minimum edge distance", product.cmin],
    ["minimum spacing", product.smin],
    ["minimum thickness", product.hmin],
    ["critical edge distance", product.cac],
    ["bearing area of the head", product.Abrg],
    ["concrete strength", concrete.fc],
    ["slab thickness", concrete.thickness],
    ["lightweight factor", concrete.lambda],
  ];
  const wrong = positive.find(([, v]) => v !== undefined && !(v > 0 && Number.isFinite(v)));
  if (wrong) return `the ${wrong[0]} must be a number above 0, got ${wrong[1]}`;
  const bent = piece.barriers.find(({ a, b }) => ![a.x, a.y, b.x, b.y].every(Number.isFinite));
  return bent && `the ${bent.kind} has an end that is not a number`;
};
