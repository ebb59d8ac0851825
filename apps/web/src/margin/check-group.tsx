import type { MarginCheck } from "@floorworthy/assess";
import { Fold } from "../fold.tsx";
import type { Units } from "../work/messages.ts";
import { CheckLine, ratioWords } from "./check-line.tsx";

/** Checks of one kind, the worst in sight and the rest folded; `folded`: all of them. */
export const CheckGroup = (props: {
  readonly title: string;
  readonly checks: readonly MarginCheck[];
  readonly best: ReadonlyMap<string, number>;
  readonly units: Units;
  readonly show: "worst" | "folded";
}) => {
  const worstFirst = [...props.checks].sort((a, b) => b.ratio - a.ratio);
  const seen = props.show === "folded" ? [] : worstOfEach(worstFirst).slice(0, 4);
  const rest = worstFirst.filter((check) => !seen.includes(check));
  const list = (checks: readonly MarginCheck[]) => (
    <ul className="checks">
      {checks.map((check) => (
        <CheckLine
          key={`${check.id} ${check.concrete ?? ""} ${check.governs ?? ""} ${check.weight}`}
          check={check}
          best={props.best.get(check.id)}
          units={props.units}
        />
      ))}
    </ul>
  );
  return (
    <div className="check-group">
      <h3>{props.title}</h3>
      {seen.length > 0 && list(seen)}
      {rest.length > 0 && (
        <Fold
          name="more"
          head={`${rest.length} ${seen.length > 0 ? "more" : "checks"}, the worst ${ratioWords(rest[0]!.ratio)}`}
        >
          {list(rest)}
        </Fold>
      )}
    </div>
  );
};

/** The worst that counts of each title, so that one trouble does not crowd out the others. */
const worstOfEach = (worstFirst: readonly MarginCheck[]): readonly MarginCheck[] => {
  const counted = worstFirst.filter(({ weight }) => weight === "limit");
  return counted.filter((check, i) => counted.findIndex(({ title }) => title === check.title) === i);
};
