import { ask } from "./ask.ts";

export type Role = "reader" | "editor" | "owner";
export interface Session {
  readonly accounts: "open" | "accounts";
  readonly person?: { readonly name: string; readonly role: Role };
}
export interface PersonEntry {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
}

export const readSession = (): Promise<Session> => ask("GET", "/api/session");
export const signIn = (name: string, password: string): Promise<Session> =>
  ask("POST", "/api/session", { name, password });
export const signOut = (): Promise<void> => ask("DELETE", "/api/session");
export const listPeople = (): Promise<readonly PersonEntry[]> => ask("GET", "/api/people");
export const addPerson = (name: string, role: Role, password: string): Promise<PersonEntry> =>
  ask("POST", "/api/people", { name, role, password });
export const setRole = (id: string, role: Role): Promise<void> =>
  ask("PUT", `/api/people/${encodeURIComponent(id)}/role`, { role });
