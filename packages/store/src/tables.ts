/** Columns as both databases keep them; ISO instants are text. */
export interface Tables {
  documents: { id: string; kind: string };
  revisions: {
    document_id: string;
    number: number;
    title: string;
    text: string;
    shelf: string;
    note: string;
    by: string;
    at: string;
  };
  entries: {
    id: string;
    document_id: string;
    kind: string;
    body: string;
    made_at: string;
    by: string;
    received_at: string;
    revision: number;
  };
  files: { hash: string; mime: string; size: number; bytes: Uint8Array };
  attachments: { document_id: string; hash: string; name: string; note: string; by: string; at: string };
  people: { id: string; name: string; name_key: string; role: string; password_hash: string; at: string };
  sessions: { token_hash: string; person_id: string; expires_at: string };
}
