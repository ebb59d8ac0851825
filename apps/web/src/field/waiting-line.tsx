import { giveUp, sendNow, useOutbox } from "./outbox.ts";
import { countsOf, type Waiting } from "./waiting.ts";

const many = (count: number, one: string, more: string): readonly string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];

/** What this device still has to send, and what was refused. `always`: also says that nothing waits. */
export const WaitingLine = ({ show }: { show: "always" | "when-something-waits" }) => {
  const { items, sending, why } = useOutbox();
  const { entries, photographs, refused } = countsOf(items);
  const waiting = [...many(entries, "entry", "entries"), ...many(photographs, "photograph", "photographs")];
  const quiet = waiting.length === 0 && refused.length === 0;
  if (quiet && show === "when-something-waits") return null;
  const verb = entries + photographs === 1 ? "waits" : "wait";
  return (
    <section className="waiting" aria-label="To be sent" data-waiting={entries + photographs}>
      <p role="status">
        {waiting.length === 0
          ? "Nothing waits to be sent."
          : sending === "sending"
            ? `Sending ${waiting.join(" and ")} …`
            : `${waiting.join(" and ")} ${verb} on this device. ${why ?? ""}`}
      </p>
      {waiting.length > 0 && sending === "at-rest" && (
        <button type="button" onClick={() => sendNow()}>
          Send now
        </button>
      )}
      {refused.length > 0 && (
        <ul className="refused-list">
          {refused.map((item) => (
            <Refusal key={item.id} item={item} />
          ))}
        </ul>
      )}
    </section>
  );
};

const Refusal = ({ item }: { item: Waiting }) => (
  <li>
    <p>
      <b>Refused: {item.words}.</b> {item.fate.state === "refused" && item.fate.why}
    </p>
    <p className="refused-hand">
      {item.kind === "entry" && <a href={`#/jobs/${encodeURIComponent(item.jobId)}/cards/${item.place}`}>Correct it</a>}
      <button type="button" onClick={() => giveUp(item)}>
        Give it up
      </button>
    </p>
  </li>
);
