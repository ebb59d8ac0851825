/** Long work says how far it is. */
export type Tell = (done: number, of: number) => void;
