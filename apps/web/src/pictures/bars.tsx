/** Amounts beside each other, longest first or as given; the figure stands at the end of its bar. */
export const BarPicture = (props: {
  readonly title: string;
  readonly bars: readonly { readonly name: string; readonly value: number; readonly words: string }[];
}) => {
  const most = Math.max(...props.bars.map(({ value }) => value), 1e-9);
  return (
    <figure className="picture">
      <figcaption>{props.title}</figcaption>
      <ol className="bars">
        {props.bars.map(({ name, value, words }) => (
          <li key={name}>
            <span className="bar-name">{name}</span>
            <svg viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
              <rect width={Math.max(0.5, (100 * value) / most)} height="6" />
            </svg>
            <b>{words}</b>
          </li>
        ))}
      </ol>
    </figure>
  );
};
