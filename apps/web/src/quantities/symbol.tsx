/** A symbol as printed in its source, what follows an underscore set low: `t_min`. */
export const MathSymbol = ({ written }: { written: string }) => {
  const [letter, ...low] = written.split("_");
  return (
    <var>
      {letter}
      {low.length > 0 && <sub>{low.join(" ")}</sub>}
    </var>
  );
};
