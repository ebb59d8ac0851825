import { shownLength } from "../../quantities/shown.ts";
import type { Units } from "../../work/messages.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { LayerName, useLayers } from "./use-layers.ts";

/** What the layers say, in words and figures, with what is still being worked out. */
export const LayerWords = (props: {
  readonly layers: ReturnType<typeof useLayers>;
  readonly on: ReadonlySet<LayerName>;
  readonly units: Units;
  readonly margins: "asked" | "not-asked";
  readonly onMargins: () => void;
}) => {
  const { layers, on, units, margins, onMargins } = props;
  const { bodies, placing, map, lines } = layers;
  const slab = lines.value?.ok ? lines.value.value : undefined;
  const places = placing.value?.ok ? placing.value.value : undefined;
  const found = map.value?.ok ? map.value.value : undefined;
  const reach = bodies.value?.ok ? bodies.value.value[0]?.reach : undefined;
  const at = (mm: number) => `${shownLength(mm, units)}${units === "si" ? " mm" : ""}`;
  return (
    <div className="layer-words">
      {on.has("bodies") && <WorkState work={bodies} what="Drawing the bodies" />}
      {on.has("bodies") && bodies.value?.ok && (
        <p>
          {reach === undefined
            ? "How deep the anchors hold is not known, so nothing can be drawn."
            : `Thin: each anchor's breakout body, ${at(reach)} to each side, cut off by edges, joints and cracks. Heavy: all of a base together.`}
        </p>
      )}
      {slab && on.has(slab.what) && (
        <p>
          {slab.what === "stress" ? "Largest tension of either face" : "Pressure on the ground, own weight included"},{" "}
          {slab.unit}, under “{slab.caseName}”. At most{" "}
          <b>
            {figure(slab.peak.value)} {slab.unit}
          </b>
          {slab.peak.face && ` at the ${slab.peak.face}`}, {at(slab.peak.at.x)} from the left and {at(slab.peak.at.y)}{" "}
          from the back wall (ringed); {figure(slab.allowed)} {slab.unit} may be asked
          {slab.over.length > 0 ? "; cross-hatched: more than that." : ", nowhere reached."}
        </p>
      )}
      {(on.has("stress") || on.has("pressure")) && <WorkState work={lines} what="Solving the slab" />}
      {on.has("places") && <WorkState work={placing} what="Looking where the lift may stand" />}
      {places && on.has("places") && (
        <p>
          Hatched: places for the middle of the lift; crossed: where it is now; ringed: the place with the most room.{" "}
          {places.sentence}{" "}
          {margins === "not-asked" && places.proposed && (
            <button type="button" onClick={onMargins}>
              Work out the margin at these places
            </button>
          )}
        </p>
      )}
      {margins === "asked" && on.has("places") && <WorkState work={map} what="Margin at one place after another" />}
      {found && on.has("places") && (
        <p>
          Figures: the worst check with the lift's middle there, in % of what may be asked.
          {found.least?.ratio !== undefined &&
            ` Least ${Math.round(found.least.ratio * 100)} % (${found.least.title?.toLowerCase()}) at ${at(found.least.at.x)} from the left and ${at(found.least.at.y)} from the back wall;`}
          {found.most?.ratio !== undefined && ` most ${Math.round(found.most.ratio * 100)} %.`} {found.notes.join(" ")}
        </p>
      )}
    </div>
  );
};

const figure = (value: number): string => Number(value.toPrecision(3)).toLocaleString("en-US");
