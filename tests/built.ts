import { ensureBuilt } from "../scripts/built.mjs";

/** Tests that start the built programs find them built, once for all of them. */
export default (): void => ensureBuilt();
