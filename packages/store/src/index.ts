export { type OpenOptions, openStore } from "./open.ts";
export { StoreRefusal } from "./refusal.ts";
export type {
  Attachment,
  Conflict,
  DocumentKind,
  Entry,
  Heading,
  History,
  NewPerson,
  Person,
  Revision,
  Role,
  Saved,
  Store,
} from "./store.ts";
