import { useMemo } from "react";
import { TermLine } from "../../margin/term-line.tsx";
import { CurvePicture } from "../../pictures/curve.tsx";
import type { Mark } from "../../pictures/curve-data.ts";
import { inUsualUnit, usualUnit } from "../../quantities/shown.ts";
import type { Units } from "../../work/messages.ts";
import { useWork } from "../../work/use-work.ts";
import { today } from "../today.ts";

const countWords = { cautious: "cautious count", usual: "usual count", arrhenius: "by Arrhenius" } as const;
const pens = { cautious: "solid", usual: "dashed", arrhenius: "dotted" } as const;

/** When the fresh concrete may be drilled: strength against days, with the day the drilling may begin. */
export const CurePicture = ({ text, units }: { text: string; units: Units }) => {
  const day = useMemo(today, []);
  const work = useWork("curePicture", [text, units, day], { pause: 300 });
  if (!work.value?.ok) return null;
  const { concrete, sentence, curve, maker, ask, earliest, notes, warnings, heatEnough } = work.value.value;
  const last = Math.max(0, ...curve.flatMap(({ points }) => points.map((p) => p.day)));
  const dayMark = (
    at: { readonly day: number; readonly date: string | undefined } | undefined,
    words: string,
  ): Mark[] =>
    at && at.day <= last ? [{ at: at.day, along: "x", words: `${words} ${at.date ?? `day ${at.day}`}` }] : [];
  return (
    <section className="finding" aria-label="When it may be drilled">
      <p className="finding-said">{sentence}</p>
      <CurvePicture
        title={`Strength of ${concrete} against days since the pour`}
        x="days since the pour"
        y={`strength, ${usualUnit("MPa", units)}`}
        curves={curve.map(({ count, points }) => ({
          name: countWords[count],
          pen: pens[count],
          points: points.map((p) => [p.day, inUsualUnit(p.strength, "MPa", units)] as const),
        }))}
        marks={[
          ...(ask
            ? [{ at: inUsualUnit(ask.value, ask.unit, units), along: "y" as const, words: "asked before drilling" }]
            : []),
          ...dayMark(maker, "the maker's days:"),
          ...(earliest && earliest.day !== maker?.day ? dayMark(earliest, "drill not before") : []),
        ]}
      />
      {heatEnough.map(({ term }) => (
        <TermLine key={term.words} term={term} units={units} />
      ))}
      {[...warnings, ...notes].map((line) => (
        <p key={line} className="quiet">
          {line}
        </p>
      ))}
    </section>
  );
};
