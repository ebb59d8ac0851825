/** Fills of the drawing: stipple for the slab, strokes for a pad. Sized by the letters so that they look alike at any scale. */
export const Hatches = ({ letters }: { letters: number }) => {
  const s = letters;
  return (
    <defs>
      <pattern id="stipple" width={3 * s} height={3 * s} patternUnits="userSpaceOnUse">
        <path className="stipple" d={`M${0.4 * s} ${0.6 * s}l${0.22 * s} ${0.3 * s}h${-0.4 * s}z`} />
        <circle className="stipple" cx={1.9 * s} cy={0.5 * s} r={0.07 * s} />
        <circle className="stipple" cx={1.2 * s} cy={1.7 * s} r={0.06 * s} />
        <circle className="stipple" cx={2.5 * s} cy={2.5 * s} r={0.07 * s} />
        <path className="stipple" d={`M${2.2 * s} ${1.5 * s}l${0.3 * s} ${0.12 * s}l${-0.25 * s} ${0.22 * s}z`} />
        <circle className="stipple" cx={0.5 * s} cy={2.4 * s} r={0.05 * s} />
      </pattern>
      <pattern
        id="strokes"
        width={0.7 * s}
        height={0.7 * s}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="stroke" d={`M0 0v${0.7 * s}`} />
      </pattern>
    </defs>
  );
};
