import type { Session } from "../api/session.ts";
import { CardInHand } from "./card-in-hand.tsx";
import { type Card, cardNamed } from "./cards.ts";
import { useCard } from "./use-card.ts";
import { WaitingLine } from "./waiting-line.tsx";

interface CardPageProps {
  readonly id: string;
  readonly card: string;
  readonly step: string | undefined;
  readonly session: Session;
}

/** A card for the garage: one thing at a time, with or without a signal. */
export const CardPage = ({ id, card: name, step, session }: CardPageProps) => {
  const card = cardNamed(name);
  if (!card) return <p role="alert">There is no such card.</p>;
  if (session.person?.role === "reader")
    return <p role="alert">You may look, not write: a card is for those who may write.</p>;
  return <Opened key={card.id} jobId={id} card={card} step={step} />;
};

const Opened = ({ jobId, card, step }: { jobId: string; card: Card; step: string | undefined }) => {
  const hand = useCard(jobId, card);
  const job = `#/jobs/${encodeURIComponent(jobId)}`;
  const at = (place: string) => `${job}/cards/${card.id}/${encodeURIComponent(place)}`;
  return (
    <main className="card" data-card={card.id}>
      <header className="card-head">
        <a href={job}>‹ {hand?.plan?.title ?? "Job"}</a>
        <h1>{card.title}</h1>
      </header>
      <WaitingLine show="always" />
      {!globalThis.isSecureContext && (
        <p className="quiet">Keep this page open: without https it cannot be opened again where there is no signal.</p>
      )}
      {hand?.fault && <p role="alert">{hand.fault}</p>}
      {hand?.plan ? (
        <CardInHand jobId={jobId} card={card} hand={hand} place={step ?? hand.draft?.at ?? ""} at={at} />
      ) : (
        !hand?.fault && <p role="status">Making the card …</p>
      )}
    </main>
  );
};
