import { useSyncExternalStore } from "react";

/** Where the person is; it stands in the address, so that it can be kept and sent. */
export type Route =
  | { readonly page: "jobs" }
  | { readonly page: "job"; readonly id: string; readonly part: string | undefined }
  | { readonly page: "card"; readonly id: string; readonly card: string; readonly step: string | undefined }
  | { readonly page: "lifts" }
  | { readonly page: "lift"; readonly id: string }
  | { readonly page: "manual"; readonly id: string; readonly hash: string }
  | { readonly page: "people" };

export const routeOf = (hash: string): Route => {
  const [first, id, third, fourth, fifth] = hash.replace(/^#\/?/, "").split("/").map(decodeURIComponent);
  if (first === "jobs" && id && third === "cards" && fourth)
    return { page: "card", id, card: fourth, step: fifth || undefined };
  if (first === "jobs" && id) return { page: "job", id, part: third || undefined };
  if (first === "lifts" && id && third === "manual" && fourth) return { page: "manual", id, hash: fourth };
  if (first === "lifts") return id ? { page: "lift", id } : { page: "lifts" };
  return first === "people" ? { page: "people" } : { page: "jobs" };
};

const watch = (changed: () => void) => {
  globalThis.addEventListener("hashchange", changed);
  return () => globalThis.removeEventListener("hashchange", changed);
};

export const useRoute = (): Route => routeOf(useSyncExternalStore(watch, () => location.hash));

export const go = (address: string): void => {
  location.hash = address;
};
