const second = 1000;

/**
 * Calls `stop` once, when somebody ends this program: by Ctrl+C, by a signal, or by ending the npm that started it
 * (npm's shell does not always pass the signal on).
 */
export const whenToStop = (stop: () => void): void => {
  let state: "running" | "stopping" = "running";
  const once = () => {
    if (state === "running") stop();
    state = "stopping";
  };
  process.on("SIGINT", once);
  process.on("SIGTERM", once);
  const parent = process.ppid;
  if (process.env.npm_lifecycle_event) setInterval(() => process.ppid !== parent && once(), second).unref();
};
