/** What the store asks of the world around it. */
export interface Surroundings {
  /** the present instant, ISO, UTC */
  readonly now: () => string;
  readonly newId: () => string;
}
