/** Installs the packages of the lock file unless they are there. */
export const installPackages: () => void;
/** The path of a Chromium on this machine, if one is in a usual place. */
export const findChromium: () => string | undefined;
