import type { KnownFact, Referral } from "@floorworthy/assess/referral";
import { capital } from "@floorworthy/engine/quantities";
import { type Note, note } from "../note.ts";

const small = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** Facts that are known in the same way on one line, so that it is seen at once how sure they are; the unknown last. */
const factsNote = (heading: string, facts: readonly KnownFact[]): Note => {
  const known = facts.filter(({ value }) => value !== "not known");
  const open = facts.filter(({ value }) => value === "not known");
  const bases = [...new Set(known.map(({ basis }) => basis))];
  return note(heading, [
    ...bases.map((basis) => {
      const same = known.filter((fact) => fact.basis === basis);
      const listed = same.map(({ what, value }) => `${small(what)} ${value}`).join("; ");
      return `${basis ? `${capital(basis)}: ` : ""}${basis ? listed : capital(listed)}.`;
    }),
    open.length > 0 ? `Not known: ${open.map(({ what }) => small(what)).join(", ")}.` : undefined,
  ]);
};

/** Each reading stands by itself. */
const readingsNote = (readings: readonly KnownFact[]): Note =>
  note(
    "Readings",
    readings.map(
      ({ what, value, basis }) => `${what.replace(/^Reading /, "")}: ${value}${basis ? ` (${basis})` : ""}.`,
    ),
  );

/** What the engineer must read first. */
export const questionNotes = ({ question, stops, reasons, told }: Referral): readonly Note[] => [
  note("Asked of the engineer", question.asked),
  note("Not asked", question.notAsked),
  note(
    "What led here",
    stops.map(({ reason, next }) => `${reason} ${next}`),
  ),
  note("Lines of the maker's page not met or not shown", reasons),
  note("For the record", told, "box"),
];

export const factNotes = (pack: Referral): readonly Note[] => [
  note("Not verified by anybody", pack.notVerified),
  factsNote("Floor, by how it is known", pack.floor),
  factsNote("Site", pack.site),
  readingsNote(pack.readings),
  factsNote("Lift", pack.lift),
  factsNote("Anchors", pack.anchors),
  factsNote("Vehicles", pack.vehicles),
  note("Taken for the loads", pack.loads.assumed.map(capital)),
  note("Photographs wanted", pack.photographs, "box"),
];
