import type { Candidate, PageFound } from "@floorworthy/manuals";
import { useEffect, useRef } from "react";

/** The page of the manual with the line marked. */
export const PageSight = ({
  picture,
  candidate,
  pages,
}: {
  readonly picture: string;
  readonly candidate: Candidate;
  readonly pages: readonly PageFound[];
}) => {
  const { page, box, line, printed } = candidate.evidence;
  const size = pages.find(({ number }) => number === page);
  const window = useRef<HTMLDivElement>(null);
  const mark = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another line is brought into sight
  useEffect(() => {
    if (!window.current || !mark.current) return;
    window.current.scrollTop = mark.current.offsetTop - window.current.clientHeight / 3;
  }, [candidate.id]);
  if (!size) return null;
  const of = (part: number, whole: number) => `${(100 * part) / whole}%`;
  return (
    <figure className="page-sight">
      <figcaption>
        Page {printed ?? page}: <q>{line}</q>
      </figcaption>
      <div className="page-window" ref={window}>
        <div className="page-sheet">
          <img
            key={picture}
            src={picture}
            width={size.width}
            height={size.height}
            alt={`page ${page} of the manual; the marked line reads: ${line}`}
          />
          <div
            ref={mark}
            className="page-mark"
            style={{
              left: of(box.x - 4, size.width),
              top: of(box.y - 3, size.height),
              width: of(box.width + 8, size.width),
              height: of(box.height + 6, size.height),
            }}
          />
        </div>
      </div>
    </figure>
  );
};
