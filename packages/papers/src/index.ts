export * from "./charts/index.ts";
export * from "./drawing/index.ts";
export * from "./plan/index.ts";
export * from "./print/index.ts";
export * from "./section/index.ts";
export * from "./sheets/index.ts";
export * from "./svg/index.ts";
