import { randomUUID } from "node:crypto";
import { ask } from "./ask.ts";
import { type Ledger, sha256 } from "./ledger.ts";

/** A job file of some 20 kB whose last line tells whether all of it is there. */
export const jobText = (): string => {
  const lines = Array.from({ length: 250 }, () => `# ${randomUUID()} ${randomUUID()}`);
  const text = `floorworthy: 1\ntitle: Bay ${randomUUID()}\n${lines.join("\n")}\n`;
  return `${text}# whole ${sha256(text)}\n`;
};

const round = () => {
  const id = randomUUID();
  return {
    id,
    kind: "torque round",
    at: new Date().toISOString(),
    set: [{ path: "title", value: `Round ${id}` }],
    add: [],
  };
};

interface Writer {
  readonly address: string;
  readonly ledger: Ledger;
  /** documents that several writers write */
  readonly shared: readonly string[];
  readonly until: AbortSignal;
}

const make = async ({ address, ledger }: Writer): Promise<string | undefined> => {
  const text = jobText();
  const { status, json } = await ask(address, "POST", "/api/jobs", { text });
  if (status !== 201) return undefined;
  const { id } = json();
  ledger.documents.add(id);
  ledger.revisions.set(`${id} 1`, { id, number: 1, sha256: sha256(text) });
  return id;
};

const change = async ({ address, ledger }: Writer, id: string, basedOn: number): Promise<number> => {
  const text = jobText();
  const { status, json } = await ask(address, "PUT", `/api/jobs/${id}`, { basedOn, text });
  if (status === 409) {
    ledger.counts.conflicts += 1;
    return json().head.number;
  }
  if (status !== 200) return basedOn;
  const { number } = json();
  ledger.revisions.set(`${id} ${number}`, { id, number, sha256: sha256(text) });
  return number;
};

const enter = async ({ address, ledger }: Writer, id: string): Promise<void> => {
  const body = round();
  ledger.unanswered.set(body.id, { id, body });
  const { status } = await ask(address, "POST", `/api/jobs/${id}/entries`, body);
  if (status !== 200) return;
  ledger.unanswered.delete(body.id);
  ledger.entries.set(body.id, id);
};

const attach = async ({ address, ledger }: Writer, id: string): Promise<void> => {
  const bytes = Uint8Array.from({ length: 60_000 }, () => Math.floor(Math.random() * 256));
  const form = new FormData();
  form.set("file", new Blob([bytes], { type: "image/jpeg" }), "hole.jpg");
  const { status, json } = await ask(address, "POST", `/api/jobs/${id}/attachments`, form);
  if (status === 201) ledger.files.set(sha256(bytes), json().hash === sha256(bytes) ? id : "named wrongly");
};

/** Writes one thing after the other until the server is gone or the time is over. */
export const writeUntilKilled = async (writer: Writer): Promise<void> => {
  const numbers = new Map<string, number>(writer.shared.map((id) => [id, 1]));
  try {
    while (!writer.until.aborted) {
      const chance = Math.random();
      const known = [...numbers.keys()];
      const id = known[Math.floor(Math.random() * known.length)];
      if (id === undefined || chance < 0.15) {
        const made = await make(writer);
        if (made) numbers.set(made, 1);
      } else if (chance < 0.65) numbers.set(id, await change(writer, id, numbers.get(id) ?? 1));
      else if (chance < 0.9) await enter(writer, id);
      else await attach(writer, id);
    }
  } catch {
    writer.ledger.counts.unanswered += 1; // the connection broke: nobody was told that this one is kept
  }
};
