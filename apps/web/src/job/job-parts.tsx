import { useEffect, useRef, useState } from "react";
import { bringIntoSight } from "./bring-into-sight.ts";
import type { PartProps } from "./part-props.ts";
import { AnchorsPart } from "./parts/anchors-part.tsx";
import { AnswerPart } from "./parts/answer-part.tsx";
import { FloorPart } from "./parts/floor-part.tsx";
import { LiftPart } from "./parts/lift-part.tsx";
import { PadPart } from "./parts/pad-part.tsx";
import { PapersPart } from "./parts/papers-part.tsx";
import { PositionPart } from "./parts/position-part.tsx";
import { PourPart } from "./parts/pour-part.tsx";
import { UpkeepPart } from "./parts/upkeep-part.tsx";
import { type PartId, parts } from "./parts.ts";

const contents: Readonly<Record<PartId, (props: PartProps) => React.ReactNode>> = {
  lift: LiftPart,
  floor: FloorPart,
  position: PositionPart,
  answer: AnswerPart,
  pad: PadPart,
  pour: PourPart,
  anchors: AnchorsPart,
  upkeep: UpkeepPart,
  papers: PapersPart,
};

const isPart = (part: string | undefined): part is PartId => parts.some(({ id }) => id === part);

/** The parts in the order of the work; each opens in place, the one in the address is opened and brought into sight. */
export const JobParts = ({ part, ...given }: PartProps & { readonly part: string | undefined }) => {
  const moved = useRef(false);
  const [opened, setOpened] = useState<ReadonlySet<PartId>>(new Set(isPart(part) ? [part] : ["answer"]));
  useEffect(() => {
    if (!isPart(part)) return;
    setOpened((before) => new Set([...before, part]));
    // a new job's three steps stand above its parts, and are to be seen first
    if (moved.current || !document.querySelector(".first-steps")) bringIntoSight(part);
    moved.current = true;
  }, [part]);
  const toggle = (id: PartId) =>
    setOpened((before) => {
      const after = new Set(before);
      if (!after.delete(id)) after.add(id);
      return after;
    });
  return (
    <div className="parts">
      {parts.map(({ id, title, says }) => {
        const Content = contents[id];
        const state = opened.has(id) ? "open" : "closed";
        return (
          <section key={id} id={`part-${id}`} className="part" data-state={state} aria-labelledby={`title-${id}`}>
            <h3 id={`title-${id}`}>
              <button
                type="button"
                aria-expanded={state === "open"}
                aria-controls={`inside-${id}`}
                onClick={() => toggle(id)}
              >
                {title} <span>{says}</span>
              </button>
            </h3>
            <div id={`inside-${id}`} className="part-inside" hidden={state === "closed"}>
              {state === "open" && <Content {...given} />}
            </div>
          </section>
        );
      })}
    </div>
  );
};
