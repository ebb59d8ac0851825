/** The sign for concrete, for every drawing of the page; one for mm of paper, one for mm of floor. */
export const Stipple = () => (
  <svg width="0" height="0" aria-hidden="true" className="unseen">
    <defs>
      <Pattern id="stipple-paper" s={2.4} />
      <Pattern id="stipple-floor" s={34} />
    </defs>
  </svg>
);

const Pattern = ({ id, s }: { id: string; s: number }) => (
  <pattern id={id} width={3 * s} height={3 * s} patternUnits="userSpaceOnUse">
    <path className="stipple" d={`M${0.4 * s} ${0.6 * s}l${0.22 * s} ${0.3 * s}h${-0.4 * s}z`} />
    <path className="stipple" d={`M${2.2 * s} ${1.5 * s}l${0.3 * s} ${0.12 * s}l${-0.25 * s} ${0.22 * s}z`} />
    <circle className="stipple" cx={1.9 * s} cy={0.5 * s} r={0.07 * s} />
    <circle className="stipple" cx={1.2 * s} cy={1.7 * s} r={0.06 * s} />
    <circle className="stipple" cx={2.5 * s} cy={2.5 * s} r={0.07 * s} />
    <circle className="stipple" cx={0.5 * s} cy={2.4 * s} r={0.05 * s} />
  </pattern>
);
