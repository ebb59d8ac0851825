/** `A B C D` of Hetenyi, Beams on Elastic Foundation (1946), Table I [hetenyi-1946], at x = λ · distance ≥ 0. */
export const hetenyiA = (x: number): number => Math.exp(-x) * (Math.cos(x) + Math.sin(x));
export const hetenyiB = (x: number): number => Math.exp(-x) * Math.sin(x);
export const hetenyiC = (x: number): number => Math.exp(-x) * (Math.cos(x) - Math.sin(x));
export const hetenyiD = (x: number): number => Math.exp(-x) * Math.cos(x);
