import type { Units } from "../work/messages.ts";

const names: Readonly<Record<Units, string>> = { "inch-pound": "inch-pound", si: "SI" };

/** In which units the answers are shown; the file keeps what was written. */
export const UnitsSwitch = ({ units, onChoose }: { units: Units; onChoose: (units: Units) => void }) => (
  <fieldset className="looks">
    <legend className="unseen">Units shown</legend>
    {(["inch-pound", "si"] as const).map((system) => (
      <label key={system}>
        <input type="radio" name="units" checked={system === units} onChange={() => onChoose(system)} />
        {names[system]}
      </label>
    ))}
  </fieldset>
);
