import type { FactField } from "../work/messages.ts";

/** One fact as a plain text field, with what was understood read back below it, or what is wrong with it. */
export const FactInput = (props: {
  readonly fact: FactField;
  readonly typed: string | undefined;
  readonly settled: boolean;
  readonly onType: (fact: FactField, written: string) => void;
}) => {
  const { fact, typed, settled, onType } = props;
  const id = `fact-${fact.path}`;
  const wrong = settled && fact.mistake !== undefined;
  return (
    <div className="fact" data-wrong={wrong || undefined}>
      <label htmlFor={id}>{fact.label}</label>
      <input
        id={id}
        value={typed ?? fact.written}
        placeholder="unknown"
        autoComplete="off"
        spellCheck={false}
        aria-invalid={wrong}
        aria-describedby={`${id}-read`}
        onChange={({ target }) => onType(fact, target.value)}
      />
      <p id={`${id}-read`} className="read-back">
        {!settled ? "…" : (fact.mistake ?? fact.understood)}
      </p>
    </div>
  );
};
