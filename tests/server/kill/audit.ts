import { ask } from "./ask.ts";
import { type Ledger, sha256 } from "./ledger.ts";

interface Noted {
  readonly number: number;
  readonly note: string;
}

const isWhole = (text: string): boolean => {
  const at = text.lastIndexOf("# whole ");
  return sha256(text.slice(0, at)) === text.slice(at + 8).trim();
};

/** What is wrong with one document: gaps, torn texts, entries and revisions that do not belong together. */
const auditDocument = async (address: string, id: string, ledger: Ledger): Promise<string[]> => {
  const faults: string[] = [];
  const read = async (path: string) => (await ask(address, "GET", `/api/jobs/${id}${path}`)).json();
  const history: Noted[] = await read("/revisions");
  const entries: { id: string; revision: number }[] = await read("/entries");
  const byRevision = new Map(entries.map((entry) => [entry.revision, entry.id]));
  history.forEach(({ number }, i) => {
    if (number !== history.length - i) faults.push(`${id}: revision ${history.length - i} is missing`);
  });
  if (byRevision.size !== entries.length) faults.push(`${id}: two entries in one revision`);
  for (const { number, note } of history) {
    const mine = ledger.revisions.get(`${id} ${number}`);
    const entered = byRevision.get(number);
    if ((note === "torque round") !== (entered !== undefined))
      faults.push(`${id}: revision ${number} and its entry are not together`);
    byRevision.delete(number);
    const { text } = await read(`/revisions/${number}`);
    if (mine && mine.sha256 !== sha256(text))
      faults.push(`${id}: revision ${number} reads otherwise than acknowledged`);
    if (entered ? !text.includes(`Round ${entered}`) : !isWhole(text)) faults.push(`${id}: revision ${number} is torn`);
  }
  if (byRevision.size > 0) faults.push(`${id}: an entry without its revision`);
  return faults;
};

/** Everything acknowledged is there, and nothing is half there in these documents. Returns what is wrong. */
const auditThese = async (address: string, ids: Iterable<string>, ledger: Ledger): Promise<string[]> => {
  const faults: string[] = [];
  const kept = new Map<string, number>();
  for (const id of ids) {
    faults.push(...(await auditDocument(address, id, ledger)));
    for (const entry of (await ask(address, "GET", `/api/jobs/${id}/entries`)).json())
      kept.set(entry.id, (kept.get(entry.id) ?? 0) + 1);
  }
  for (const { id, number } of ledger.revisions.values()) {
    const { status } = await ask(address, "GET", `/api/jobs/${id}/revisions/${number}`);
    if (status !== 200) faults.push(`revision ${number} of ${id} was acknowledged and is lost`);
  }
  for (const id of ledger.entries.keys())
    if (kept.get(id) !== 1) faults.push(`entry ${id} was acknowledged and is there ${kept.get(id) ?? 0} times`);
  for (const hash of ledger.files.keys()) {
    const file = await ask(address, "GET", `/api/attachments/${hash}`);
    if (sha256(file.bytes) !== hash) faults.push(`file ${hash} was acknowledged and is lost`);
  }
  return faults;
};

/** What one round has touched. */
export const auditRound = (address: string, ledger: Ledger, shared: readonly string[]): Promise<string[]> =>
  auditThese(address, new Set([...ledger.documents, ...shared]), ledger);

/** Every document there is, also those whose making nobody was told of. */
export const auditAll = async (address: string, ledger: Ledger): Promise<string[]> => {
  const list: { id: string }[] = (await ask(address, "GET", "/api/jobs")).json();
  const there = new Set(list.map(({ id }) => id));
  const lost = [...ledger.documents].filter((id) => !there.has(id));
  return [...lost.map((id) => `job ${id} was acknowledged and is lost`), ...(await auditThese(address, there, ledger))];
};

/** Sends again what nobody answered, as a phone would: it must be taken, and be there once. */
export const sendAgain = async (address: string, ledger: Ledger): Promise<string[]> => {
  const faults: string[] = [];
  for (const [entry, { id, body }] of ledger.unanswered) {
    const { status } = await ask(address, "POST", `/api/jobs/${id}/entries`, body);
    if (status === 200) ledger.entries.set(entry, id);
    else faults.push(`entry ${entry} sent again was answered ${status}`);
  }
  ledger.unanswered.clear();
  return faults;
};
