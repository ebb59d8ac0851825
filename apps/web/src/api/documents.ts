import { ask } from "./ask.ts";

export interface Heading {
  readonly id: string;
  readonly kind: "job" | "lift";
  readonly number: number;
  readonly title: string;
  readonly shelf: "open" | "put-away";
  readonly note: string;
  readonly by: string;
  readonly at: string;
}
export interface Revision extends Heading {
  readonly text: string;
}

export type Kind = "jobs" | "lifts";

const at = (kind: Kind, id: string): string => `/api/${kind}/${encodeURIComponent(id)}`;

export const listDocuments = (kind: Kind, shelf: Heading["shelf"] = "open"): Promise<readonly Heading[]> =>
  ask("GET", `/api/${kind}?shelf=${shelf}`);
export const readDocument = (kind: Kind, id: string, number?: number): Promise<Revision> =>
  ask("GET", number === undefined ? at(kind, id) : `${at(kind, id)}/revisions/${number}`);
export const historyOf = (kind: Kind, id: string): Promise<readonly Heading[]> =>
  ask("GET", `${at(kind, id)}/revisions`);
export const createDocument = (kind: Kind, text: string, note = ""): Promise<Revision> =>
  ask("POST", `/api/${kind}`, { text, note });
export const saveDocument = (
  kind: Kind,
  id: string,
  basedOn: number,
  text: string,
  more: { readonly note?: string; readonly shelf?: Heading["shelf"] } = {},
): Promise<Revision> => ask("PUT", at(kind, id), { basedOn, text, ...more });
export const takeDemo = (): Promise<{ readonly put: number }> => ask("POST", "/api/demo");
