export * from "./blocks.ts";
export { layOut } from "./lay-out.ts";
export { lineAt } from "./running-text.ts";
