/**
 * How much of a load a joint hands to the other side. Three numbers go by the same name; say which one is meant.
 * With du, dl the deflections of the unloaded and the loaded side: "ratio" is du/dl, "share" is 2du/(dl + du). The
 * stress ratio is a third and follows from neither without a plate solution.
 * Ioannides & Korovesis 1990, TRR 1286 [ioannides-korovesis-1990].
 */
export type TransferDefinition = "ratio" | "share";

/** Load-transfer efficiency, 0..1, from the two deflections (any unit). */
export const loadTransfer = (loaded: number, unloaded: number, definition: TransferDefinition): number =>
  definition === "ratio" ? unloaded / loaded : (2 * unloaded) / (loaded + unloaded);

/** The same joint stated the other way. */
export const restateTransfer = (efficiency: number, from: TransferDefinition, to: TransferDefinition): number => {
  if (from === to) return efficiency;
  return from === "ratio" ? (2 * efficiency) / (1 + efficiency) : efficiency / (2 - efficiency);
};

/** Deflections of both sides from the free-edge deflection, which they share: dl + du = d(free). */
export const sidesOfJoint = (
  freeEdge: number,
  ratio: number,
): { readonly loaded: number; readonly unloaded: number } => ({
  loaded: freeEdge / (1 + ratio),
  unloaded: (ratio * freeEdge) / (1 + ratio),
});
