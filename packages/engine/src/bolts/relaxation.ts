/**
 * Preload that a torqued expansion anchor keeps, as a line over the logarithm of time: F/F0 = 1 - m log10(t / 1 min).
 *
 * The line is a calibration through two published points and no measured curve: sleeve anchors kept 60 % and lead caulking
 * anchors 40 % of their first tension after 90 days (Senkiw, ACI SP-130, 1992, means of tests [senkiw]).
 */
const decadesTo90Days = Math.log10(90 * 1440);

/** `m` per decade of time. */
export const relaxationPerDecade = {
  sleeve: 0.4 / decadesTo90Days,
  leadCaulking: 0.6 / decadesTo90Days,
} as const;

/** Part of the first preload left after `days` (from one minute on; 1 before). */
export const retainedPreload = (days: number, perDecade: number): number =>
  Math.max(0, 1 - perDecade * Math.max(0, Math.log10(days * 1440)));

/** Part of the setting torque that relaxation alone leaves to be found, from - to. */
export const retainedSpan = (days: number): { readonly low: number; readonly high: number } => ({
  low: retainedPreload(days, relaxationPerDecade.leadCaulking),
  high: retainedPreload(days, relaxationPerDecade.sleeve),
});
