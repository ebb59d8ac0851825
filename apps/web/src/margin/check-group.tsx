import type { MarginCheck } from "@floorworthy/assess";
import type { Units } from "../work/messages.ts";
import { CheckList } from "./check-list.tsx";

/** Checks of one kind, the worst in sight and the rest folded; `folded`: all of them. */
export const CheckGroup = (props: {
  readonly title: string;
  readonly checks: readonly MarginCheck[];
  readonly best: ReadonlyMap<string, number>;
  readonly units: Units;
  readonly show: "worst" | "folded";
}) => (
  <div className="check-group">
    <h3>{props.title}</h3>
    <CheckList checks={props.checks} best={props.best} units={props.units} count={props.show === "folded" ? 0 : 4} />
  </div>
);
