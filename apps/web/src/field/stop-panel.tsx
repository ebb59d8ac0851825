/** What must not be done, in large words, and why. */
export const StopPanel = ({ lines, id }: { lines: readonly string[]; id: string }) => {
  const [first, ...rest] = lines;
  if (first === undefined) return null;
  return (
    <section className="card-stop" role="alert" aria-labelledby={id}>
      <p id={id} className="card-stop-said">
        {first}
      </p>
      {rest.length > 0 && (
        <details open={rest.length <= 2}>
          <summary>Why, and what to do</summary>
          <ul>
            {rest.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};
