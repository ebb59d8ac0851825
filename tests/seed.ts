// Random tests draw the same cases on every machine, so that a red run can be repeated. FAST_CHECK_SEED=N draws others.
import fc from "fast-check";

fc.configureGlobal({ seed: Number(process.env.FAST_CHECK_SEED ?? 20_260_901) });
