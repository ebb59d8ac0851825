import {
  ageForRatio,
  dayOfEquivalentAge,
  equivalentAge,
  type Gain,
  type Hardening,
  strengthRatio,
  type TemperatureStory,
} from "@floorworthy/engine/concrete";

/** What the concrete can become and what a cylinder kept beside it has shown. MPa, days. */
export interface Potential {
  readonly strength28: number;
  readonly field: { readonly age: number; readonly strength: number } | undefined;
}

interface Tuned {
  readonly strength28: number;
  /** days of standard curing added to the count from the cylinder's age on */
  readonly shift: number;
}

/**
 * The curve drawn through what a field-cured cylinder showed. Weaker than counted: the mix is taken to be weaker in that
 * share, now and later. Stronger than counted: the concrete is taken to be further on, but never to become more than was
 * ordered. Continuous where both meet, and a stronger cylinder is never a later day.
 */
const tunedTo = (story: TemperatureStory, hardening: Hardening, gain: Gain, potential: Potential): Tuned => {
  const { strength28, field } = potential;
  if (!field) return { strength28, shift: 0 };
  const counted = equivalentAge(story, field.age, hardening);
  const implied = field.strength / strengthRatio(counted, gain);
  return implied <= strength28
    ? { strength28: implied, shift: 0 }
    : { strength28, shift: ageForRatio(field.strength / strength28, gain) - counted };
};

/** Days of standard curing the concrete needs for `ask`; Infinity when it never gets there. */
export const neededAge = (ask: number, gain: Gain, { strength28 }: Pick<Potential, "strength28">): number =>
  ageForRatio(ask / strength28, gain);

/** The day on which `ask` is reached by one way of counting; Infinity when never. */
export const dayReached = (
  story: TemperatureStory,
  hardening: Hardening,
  gain: Gain,
  potential: Potential,
  ask: number,
): number => {
  const { field } = potential;
  if (field && field.strength >= ask) return field.age;
  const tuned = tunedTo(story, hardening, gain, potential);
  const needed = ageForRatio(ask / tuned.strength28, gain);
  if (!Number.isFinite(needed)) return Number.POSITIVE_INFINITY;
  const reached = dayOfEquivalentAge(story, Math.max(0, needed - tuned.shift), hardening);
  return field ? Math.max(reached, field.age) : reached;
};

/** Strength on a day by one way of counting, MPa; through the field-cured cylinder from its age on. */
export const strengthOn = (
  story: TemperatureStory,
  age: number,
  hardening: Hardening,
  gain: Gain,
  potential: Potential,
): number => {
  const counted = equivalentAge(story, age, hardening);
  const { field } = potential;
  if (!field || age < field.age) return potential.strength28 * strengthRatio(counted, gain);
  const { strength28, shift } = tunedTo(story, hardening, gain, potential);
  return strength28 * strengthRatio(counted + shift, gain);
};
