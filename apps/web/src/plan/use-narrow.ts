import { useSyncExternalStore } from "react";

/** The width from which on plan and parts stand beside each other, as in the look of the page. */
const NARROW = "(max-width: 48rem)";

const watch = (changed: () => void) => {
  const list = globalThis.matchMedia(NARROW);
  list.addEventListener("change", changed);
  return () => list.removeEventListener("change", changed);
};

/** Whether the screen is a phone's. */
export const useNarrow = (): "narrow" | "wide" =>
  useSyncExternalStore(watch, () => (globalThis.matchMedia(NARROW).matches ? "narrow" : "wide"));
