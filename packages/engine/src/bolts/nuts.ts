import { coarseThread } from "./threads.ts";

/** What lies between plate and thread end. Largest thicknesses of the standards, mm: the most a stud must reach through. */
export interface NutAndWasher {
  readonly nut: number;
  readonly washer: number;
}

const inches = (nut: number, washer: number): NutAndWasher => ({ nut: nut * 25.4, washer: washer * 25.4 });

/** Hex nuts ASME B18.2.2 [asme-b18.2.2], plain washers type A wide ASME B18.21.1 [asme-b18.21.1]; ISO 4032 [iso-4032], ISO 7089 [iso-7089]. */
const sizes: Readonly<Record<string, NutAndWasher>> = {
  "3/8-16 UNC": inches(0.337, 0.104),
  "1/2-13 UNC": inches(0.448, 0.132),
  "9/16-12 UNC": inches(0.496, 0.132),
  "5/8-11 UNC": inches(0.559, 0.16),
  "3/4-10 UNC": inches(0.665, 0.177),
  "7/8-9 UNC": inches(0.776, 0.192),
  "1-8 UNC": inches(0.887, 0.192),
  M10: { nut: 8.4, washer: 2.2 },
  M12: { nut: 10.8, washer: 2.7 },
  M14: { nut: 12.8, washer: 2.7 },
  M16: { nut: 14.8, washer: 3.3 },
  M20: { nut: 18, washer: 3.3 },
  M22: { nut: 19.4, washer: 3.3 },
  M24: { nut: 21.5, washer: 4.3 },
};

/** Nut and washer of a stud of nominal `diameter` mm; undefined for a size not in the table. */
export const nutAndWasher = (diameter: number): NutAndWasher | undefined => {
  const thread = coarseThread(diameter);
  return thread && sizes[thread.name];
};
