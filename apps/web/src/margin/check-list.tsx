import type { MarginCheck } from "@floorworthy/assess";
import { Fold } from "../fold.tsx";
import type { Units } from "../work/messages.ts";
import { CheckLine, ratioWords } from "./check-line.tsx";

/** How many checks are in sight before the rest is asked for. */
const IN_SIGHT = 6;

/** Checks, the worst in sight and the rest folded. */
export const CheckList = (props: {
  readonly checks: readonly MarginCheck[];
  readonly units: Units;
  readonly best?: ReadonlyMap<string, number>;
  /** the worst of each title first, so that one trouble does not crowd out the others */
  readonly first?: "worst" | "worst-of-each";
  /** how many are in sight */
  readonly count?: number;
}) => {
  const { units, best, first = "worst-of-each", count = IN_SIGHT } = props;
  const worstFirst = props.checks.toSorted((a, b) => b.ratio - a.ratio);
  const seen = (first === "worst" ? worstFirst : worstOfEach(worstFirst)).slice(0, count);
  const rest = worstFirst.filter((check) => !seen.includes(check));
  const list = (checks: readonly MarginCheck[]) => (
    <ul className="checks">
      {checks.map((check) => (
        <CheckLine
          key={`${check.id} ${check.concrete ?? ""} ${check.governs ?? ""} ${check.weight} ${check.title}`}
          check={check}
          best={best?.get(check.id)}
          units={units}
        />
      ))}
    </ul>
  );
  return (
    <>
      {seen.length > 0 && list(seen)}
      {rest.length > 0 && (
        <Fold
          name="more"
          head={`${rest.length} ${seen.length > 0 ? "more" : "checks"}, the worst ${ratioWords(rest[0]!.ratio)}`}
        >
          {list(rest)}
        </Fold>
      )}
    </>
  );
};

/** The worst that counts of each title. */
const worstOfEach = (worstFirst: readonly MarginCheck[]): readonly MarginCheck[] => {
  const counted = worstFirst.filter(({ weight }) => weight === "limit");
  return counted.filter((check, i) => counted.findIndex(({ title }) => title === check.title) === i);
};
