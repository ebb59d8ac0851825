/**
 * Lets the page be opened again without a connection: its own files are kept by the browser (public/service-worker.js).
 * Only over https or on this machine; elsewhere the browser does not offer it, and nothing else changes.
 */
export const carryAlong = (): void => {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  navigator.serviceWorker.register("/service-worker.js").catch(() => undefined);
};
