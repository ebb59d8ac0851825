import type { Assessment, PageLine } from "@floorworthy/assess";
import { Fold } from "../fold.tsx";
import { TermLine } from "../margin/term-line.tsx";
import { pageWords } from "../outcome/outcome-words.ts";
import type { Units } from "../work/messages.ts";
import { Mark } from "./mark.tsx";

/** The first answer: what the lift's maker asks, line by line. */
export const MakerPage = ({ page, units }: { page: Assessment["page"]; units: Units }) => (
  <section className="answer" aria-labelledby="page-title">
    <header>
      <h2 id="page-title">The maker's page</h2>
      <p className="verdict">{pageWords[page.verdict]}</p>
      <p className="quiet">What the lift's maker asks of the floor. This decides.</p>
    </header>
    {page.lines.length === 0 && <p className="quiet">There is no page to read the floor against.</p>}
    <ol className="lines">
      {page.lines.filter(isAsked).map((line) => (
        <Line key={line.id} line={line} units={units} />
      ))}
    </ol>
    {page.lines.some((line) => !isAsked(line)) && <NotAsked lines={page.lines.filter((line) => !isAsked(line))} />}
  </section>
);

const Line = ({ line, units }: { line: PageLine; units: Units }) => (
  <li className="line" data-result={line.result}>
    <h3>{line.title}</h3>
    <Mark result={line.result} />
    <dl>
      <dt>asked</dt>
      <dd>{line.asked}</dd>
      <dt>found</dt>
      <dd>{line.found}</dd>
    </dl>
    {line.why && <p className="why">{line.why}</p>}
    {line.manual && <ManualWords manual={line.manual} />}
    {(line.demand || line.capacity) && (
      <Fold name="more workings" head="workings">
        {line.demand && <TermLine term={line.demand} units={units} />}
        {line.capacity && <TermLine term={line.capacity} units={units} />}
      </Fold>
    )}
  </li>
);

/** The line of the manual that asks it, in its own words and, where it was kept, as a picture. */
const ManualWords = ({ manual }: { manual: NonNullable<PageLine["manual"]> }) => {
  const { document, page, line, picture } = manual;
  const where = [document, page && `page ${page}`].filter(Boolean).join(", ");
  return (
    <figure className="manual-line">
      {picture && /^[0-9a-f]{64}$/.test(picture) && (
        <img
          src={`/api/attachments/${picture}`}
          alt={line ? `the manual prints: ${line}` : "the line of the manual"}
          loading="lazy"
        />
      )}
      <figcaption>
        {line && <q>{line}</q>} <span className="quiet">{where}</span>
      </figcaption>
    </figure>
  );
};

const isAsked = ({ result }: PageLine): boolean => result !== "not-asked";

const NotAsked = ({ lines }: { lines: readonly PageLine[] }) => (
  <details className="more">
    <summary>
      {lines.length === 1 ? "one line" : `${lines.length} lines`} the page does not have, and so nobody judges
    </summary>
    <ul className="lines">
      {lines.map(({ id, title, result, why }) => (
        <li key={id} className="line">
          <h3>{title}</h3>
          <Mark result={result} />
          {why && <p className="why">{why}</p>}
        </li>
      ))}
    </ul>
  </details>
);
