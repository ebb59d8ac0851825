import { ask, Refused } from "../api/ask.ts";
import type { Reply, Waiting } from "./waiting.ts";

/** These pass: no session, too slow, too many at once, somebody in between. */
const passing = [401, 403, 408, 425, 429];

/** Hands one thing to the server. */
export const post = async (item: Waiting): Promise<Reply> => {
  const job = `/api/jobs/${encodeURIComponent(item.jobId)}`;
  try {
    if (item.kind === "entry") {
      const { kind, set, add } = item.body;
      const kept = await ask<{ revision: number }>("POST", `${job}/entries`, {
        id: item.id,
        kind,
        at: item.made,
        set,
        add,
      });
      return { kind: "taken", revision: kept.revision };
    }
    const form = new FormData();
    form.append("note", item.note);
    form.append("file", item.file, item.name);
    await ask("POST", `${job}/attachments`, form);
    return { kind: "taken", revision: undefined };
  } catch (error) {
    if (!(error instanceof Refused)) return { kind: "not-now", why: "No connection." };
    if (error.status === 401) return { kind: "not-now", why: "Sign in, then it is sent." };
    return error.status >= 500 || passing.includes(error.status)
      ? { kind: "not-now", why: error.message }
      : { kind: "refused", why: error.message };
  }
};
