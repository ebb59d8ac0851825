import { useSyncExternalStore } from "react";
import type { DemoJob } from "./use-demo-jobs.ts";

const watch = (changed: () => void) => {
  globalThis.addEventListener("hashchange", changed);
  return () => globalThis.removeEventListener("hashchange", changed);
};

/** The job named in the address, or the first of the list. */
export const useChosenJob = (jobs: readonly DemoJob[] | undefined): string | undefined => {
  const named = decodeURIComponent(useSyncExternalStore(watch, () => location.hash.slice(1)));
  return jobs?.find(({ id }) => id === named)?.id ?? jobs?.[0]?.id;
};
