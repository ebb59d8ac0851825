import { defaults, type Job } from "@floorworthy/job";

/** Poisson's ratio of concrete, as in the closed forms. */
export const NU = 0.15;

/** Modulus of rupture over stress that is asked of the slab: the person's choice, or the default. */
export const firstCrackMargin = ({ choices }: Job): number =>
  choices.firstCrackMargin.known ? choices.firstCrackMargin.value : defaults.firstCrackMargin.value;

/** Loads of a lift are taken as live load: ACI 318-19 5.3.1. A service allowance is φ times the strength over this. */
export const LOAD_FACTOR = 1.6;
