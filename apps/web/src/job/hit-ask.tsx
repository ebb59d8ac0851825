import { useState } from "react";
import type { Units } from "../work/messages.ts";
import type { TypedHit } from "../work/part-calls.ts";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";
import { HitAdvice } from "./hit-advice.tsx";

const met = {
  bar: "a bar",
  tendon: "a tendon, or what may be one",
  tube: "a tube",
  conduit: "a conduit",
  void: "a hollow",
} as const;

/** The drill stopped early: what now? */
export const HitAsk = ({ text, units, holes }: { text: string; units: Units; holes: readonly string[] }) => {
  const [typed, setTyped] = useState<TypedHit>();
  const work = useWork("hitPlan", typed && [text, units, typed]);
  const advice = typed && work.value?.ok ? work.value.value : undefined;
  return (
    <details className="group">
      <summary>
        The drill met something <span className="row-doc">stop, and ask here before anything else</span>
      </summary>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          const form = new FormData(event.currentTarget);
          const of = (key: string) => String(form.get(key) ?? "");
          setTyped({
            hole: of("hole"),
            depth: of("depth"),
            met: of("met"),
            ...(of("owner") && { owner: of("owner") }),
          });
        }}
      >
        <div className="row">
          <label htmlFor="hit-hole">Hole</label>
          <div className="row-hand">
            <input id="hit-hole" name="hole" list="hit-holes" autoComplete="off" required />
            <datalist id="hit-holes">
              {holes.map((id) => (
                <option key={id} value={id} />
              ))}
            </datalist>
          </div>
        </div>
        <div className="row">
          <label htmlFor="hit-depth">How deep it stopped</label>
          <div className="row-hand">
            <input id="hit-depth" name="depth" placeholder="such as 2 1/2 in" autoComplete="off" required />
          </div>
        </div>
        <div className="row">
          <label htmlFor="hit-met">What it met</label>
          <div className="row-hand">
            <select id="hit-met" name="met">
              {Object.entries(met).map(([key, words]) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </select>
          </div>
        </div>
        <div className="row">
          <label htmlFor="hit-owner">May one bar be cut? The slab's owner</label>
          <div className="row-hand">
            <select id="hit-owner" name="owner">
              <option value="">has not been asked</option>
              <option value="agrees">agrees</option>
              <option value="refuses">refuses</option>
            </select>
          </div>
        </div>
        <p>
          <button type="submit">What now?</button>
        </p>
      </form>
      {typed && <WorkState work={work} what="Looking for a way on" />}
      {advice && <HitAdvice advice={advice} />}
    </details>
  );
};
