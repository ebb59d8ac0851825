import { setPlain } from "@floorworthy/job/editing";
import { useForm } from "./form-context.ts";
import { factText, isGroup, reach } from "./reach.ts";

const words = {
  stated: "said",
  measured: "measured",
  documented: "on paper",
  assumed: "assumed",
} as const;

type Kind = keyof typeof words;

/** How a fact is known, changeable where it stands. */
export const BasisPicker = ({ path, label }: { path: string; label: string }) => {
  const { tree, change, hand } = useForm();
  const there = reach(tree, path);
  const basis = isGroup(there) ? there.basis : undefined;
  const kind = typeof basis === "string" && basis in words ? (basis as Kind) : "stated";
  const choose = (chosen: Kind) =>
    change("", (file) =>
      setPlain(file, path, {
        ...(isGroup(there) ? (there as Record<string, string>) : { value: factText(there) }),
        basis: chosen,
      }),
    );
  return (
    <select
      className="basis"
      aria-label={`how ${label} is known`}
      value={kind}
      disabled={hand === "only-looks"}
      onChange={({ target }) => choose(target.value as Kind)}
    >
      {Object.entries(words).map(([key, word]) => (
        <option key={key} value={key}>
          {word}
        </option>
      ))}
    </select>
  );
};
