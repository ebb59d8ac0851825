/** The server answered, and said no. */
export class Refused extends Error {
  override readonly name = "Refused";
  readonly status: number;
  readonly body: { readonly message?: string; readonly head?: unknown };
  constructor(status: number, body: { readonly message?: string }) {
    super(body.message ?? `The server answered ${status}.`);
    this.status = status;
    this.body = body;
  }
}

/** Nobody answered: no signal, or the server is not running. */
export class Unreached extends Error {
  override readonly name = "Unreached";
}

export type Method = "GET" | "POST" | "PUT" | "DELETE";

/** Asks the server. Throws Refused or Unreached, with words for the person. */
export const ask = async <T>(method: Method, url: string, body?: unknown): Promise<T> => {
  const plain = body !== undefined && !(body instanceof FormData) && !(body instanceof Blob);
  let reply: Response;
  try {
    reply = await fetch(url, {
      method,
      ...(plain && { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
      ...(body instanceof FormData && { body }),
      ...(body instanceof Blob && { headers: { "content-type": body.type }, body }),
    });
  } catch {
    throw new Unreached("The server cannot be reached.");
  }
  if (reply.status === 204) return undefined as T;
  const said = await reply.json().catch(() => ({}));
  if (!reply.ok) throw new Refused(reply.status, said);
  return said as T;
};
