export * from "./ch04-partial-factors.ts";
export * from "./ch07-2-1-tension.ts";
export * from "./ch07-2-2-shear.ts";
export * from "./ch07-2-3-interaction.ts";
