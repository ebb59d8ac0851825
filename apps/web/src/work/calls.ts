import type { drawSheet } from "./draw-sheet.ts";
import { judge, look } from "./judge.ts";

import type { placeMap, placing } from "./place-calls.ts";
import { summary } from "./summary.ts";
import type { Tell } from "./tell.ts";

type Files = typeof import("./file-calls.ts");
type Parts = typeof import("./part-calls.ts");
type Cards = typeof import("../field/card-calls.ts");
type Layers = typeof import("./layer-calls.ts");
type Pictures = typeof import("./picture-calls.ts");

/**
 * Everything a worker does for the page, by name. What is needed at once is imported above; the rest is fetched when it
 * is first asked for. Arguments and answers are plain data.
 */
export const calls = {
  look: async (_tell: Tell, ...args: Parameters<typeof look>) => look(...args),
  judge: async (_tell: Tell, ...args: Parameters<typeof judge>) => judge(...args),
  summary: async (_tell: Tell, ...args: Parameters<typeof summary>) => summary(...args),
  placing: async (_tell: Tell, ...args: Parameters<typeof placing>) =>
    (await import("./place-calls.ts")).placing(...args),
  placeMap: async (tell: Tell, ...args: After<Parameters<typeof placeMap>>) =>
    (await import("./place-calls.ts")).placeMap(tell, ...args),
  otherFiles: async (_tell: Tell, ...args: Parameters<Files["otherFiles"]>) =>
    (await import("./file-calls.ts")).otherFiles(...args),
  padPlan: async (tell: Tell, ...args: After<Parameters<Parts["padPlan"]>>) =>
    (await import("./part-calls.ts")).padPlan(tell, ...args),
  pourPlan: async (_tell: Tell, ...args: Parameters<Parts["pourPlan"]>) =>
    (await import("./part-calls.ts")).pourPlan(...args),
  setOutPlan: async (_tell: Tell, ...args: Parameters<Parts["setOutPlan"]>) =>
    (await import("./part-calls.ts")).setOutPlan(...args),
  hitPlan: async (_tell: Tell, ...args: Parameters<Parts["hitPlan"]>) =>
    (await import("./part-calls.ts")).hitPlan(...args),
  yearsPlan: async (_tell: Tell, ...args: Parameters<Parts["yearsPlan"]>) =>
    (await import("./part-calls.ts")).yearsPlan(...args),
  vehiclePlan: async (_tell: Tell, ...args: Parameters<Parts["vehiclePlan"]>) =>
    (await import("./part-calls.ts")).vehiclePlan(...args),
  liftsPlan: async (tell: Tell, ...args: After<Parameters<Parts["liftsPlan"]>>) =>
    (await import("./part-calls.ts")).liftsPlan(tell, ...args),
  bodies: async (_tell: Tell, ...args: Parameters<Layers["bodies"]>) =>
    (await import("./layer-calls.ts")).bodies(...args),
  slabLines: async (_tell: Tell, ...args: Parameters<Layers["slabLines"]>) =>
    (await import("./layer-calls.ts")).slabLines(...args),
  momentPicture: async (_tell: Tell, ...args: Parameters<Pictures["momentPicture"]>) =>
    (await import("./picture-calls.ts")).momentPicture(...args),
  curePicture: async (_tell: Tell, ...args: Parameters<Pictures["curePicture"]>) =>
    (await import("./picture-calls.ts")).curePicture(...args),
  cardStanding: async (_tell: Tell, ...args: Parameters<Cards["cardStanding"]>) =>
    (await import("../field/card-calls.ts")).cardStanding(...args),
  cardPlan: async (_tell: Tell, ...args: Parameters<Cards["cardPlan"]>) =>
    (await import("../field/card-calls.ts")).cardPlan(...args),
  listSheets: async (_tell: Tell) => (await import("./draw-sheet.ts")).listSheets(),
  drawSheet: async (_tell: Tell, ...args: Parameters<typeof drawSheet>) =>
    (await import("./draw-sheet.ts")).drawSheet(...args),
};

type After<A extends readonly unknown[]> = A extends readonly [unknown, ...infer Rest] ? Rest : never;

export type Calls = typeof calls;
export type CallName = keyof Calls;
export type Args<K extends CallName> = Calls[K] extends (tell: Tell, ...args: infer A) => unknown ? A : never;
export type Value<K extends CallName> = Awaited<ReturnType<Calls[K]>>;
