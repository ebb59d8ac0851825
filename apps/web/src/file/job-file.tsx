import type { Mistake } from "../work/messages.ts";

/** The job file as it is, to be written by hand, with every mistake by its line. */
export const JobFile = (props: {
  readonly text: string;
  readonly mistakes: readonly Mistake[];
  readonly warnings: readonly Mistake[];
  readonly onWrite: (text: string) => void;
}) => (
  <div className="job-file">
    <label htmlFor="job-text" className="quiet">
      The whole job as a file. Change anything; the answers follow.
    </label>
    <textarea
      id="job-text"
      value={props.text}
      spellCheck={false}
      autoCapitalize="off"
      aria-invalid={props.mistakes.length > 0}
      aria-describedby="job-mistakes"
      onChange={({ target }) => props.onWrite(target.value)}
    />
    <div id="job-mistakes">
      <Mistakes mistakes={props.mistakes} warnings={props.warnings} />
    </div>
  </div>
);

/** Mistakes of the file, one line each, and what is odd in it. */
export const Mistakes = (props: { readonly mistakes: readonly Mistake[]; readonly warnings: readonly Mistake[] }) => (
  <>
    <p className="quiet">
      {props.mistakes.length === 0 ? "No mistakes in the file." : `${props.mistakes.length} to mend in the file:`}
    </p>
    <List lines={props.mistakes} />
    {props.warnings.length > 0 && <p className="quiet">Worth a second look:</p>}
    <List lines={props.warnings} />
  </>
);

const List = ({ lines }: { lines: readonly Mistake[] }) =>
  lines.length > 0 && (
    <ol className="mistakes">
      {lines.map(({ path, line, message, hint }) => (
        <li key={`${line} ${path} ${message}`}>
          {line !== undefined && <b>line {line}</b>} <code>{path}</code> {message}{" "}
          {hint && <span className="quiet">{hint}</span>}
        </li>
      ))}
    </ol>
  );
