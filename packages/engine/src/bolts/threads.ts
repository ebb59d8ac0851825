/** Coarse threads of anchor studs. Lengths in mm. */
export interface Thread {
  /** as written: "3/4-10 UNC", "M16" */
  readonly name: string;
  readonly diameter: number;
  readonly pitch: number;
}

const unc = (name: string, inches: number, perInch: number): Thread => ({
  name: `${name}-${perInch} UNC`,
  diameter: inches * 25.4,
  pitch: 25.4 / perInch,
});

/** Unified coarse threads: ASME B1.1, Table 1 [asme-b1.1]. Metric coarse threads: ISO 261 [iso-261]. */
export const threads: readonly Thread[] = [
  unc("3/8", 0.375, 16),
  unc("1/2", 0.5, 13),
  unc("9/16", 0.5625, 12),
  unc("5/8", 0.625, 11),
  unc("3/4", 0.75, 10),
  unc("7/8", 0.875, 9),
  unc("1", 1, 8),
  { name: "M10", diameter: 10, pitch: 1.5 },
  { name: "M12", diameter: 12, pitch: 1.75 },
  { name: "M14", diameter: 14, pitch: 2 },
  { name: "M16", diameter: 16, pitch: 2 },
  { name: "M20", diameter: 20, pitch: 2.5 },
  { name: "M22", diameter: 22, pitch: 2.5 },
  { name: "M24", diameter: 24, pitch: 3 },
];

/** The coarse thread of a stud of nominal `diameter` mm, to 0.1 mm; undefined for a size not in the table. */
export const coarseThread = (diameter: number): Thread | undefined =>
  threads.find((thread) => Math.abs(thread.diameter - diameter) < 0.1);

/**
 * Tensile stress area, mm²: π/4 (d - 0.9743 P)² inch threads (ASME B1.1), π/4 (d - 0.9382 P)² metric (ISO 898-1, mean of
 * pitch and root diameters).
 */
export const stressArea = ({ name, diameter, pitch }: Thread): number =>
  (Math.PI / 4) * (diameter - (name.startsWith("M") ? 0.9382 : 0.9743) * pitch) ** 2;

/** How far a nut turned by `angle` (rad) has travelled along the stud, mm: angle/2π × pitch. */
export const nutTravel = (angle: number, pitch: number): number => (angle / (2 * Math.PI)) * pitch;
