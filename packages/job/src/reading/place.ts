import type { Polygon } from "@floorworthy/engine/geometry";
import type { LineCounter, Node } from "yaml";
import type { Basis } from "../fact.ts";
import type { IssueCode } from "../issues/catalogue.ts";
import type { Issue } from "../issues/issue.ts";

/** What one reading of a file shares: where mistakes are collected, and what later fields need of earlier ones. */
export interface Desk {
  readonly issues: Issue[];
  readonly warnings: Issue[];
  /** fetches another file's text; undefined when it cannot be had */
  readonly load: ((name: string) => string | undefined) | undefined;
  /** the bay's outline, read first, because a joint across the whole floor is cut to it */
  outline: Polygon | undefined;
}

/** Where in a file we are reading. */
export interface Place {
  readonly desk: Desk;
  readonly lines: LineCounter;
  /** name of the file, when it has one */
  readonly file: string | undefined;
  /** the job's own file, or a lift sheet it refers to */
  readonly within: "job" | "sheet";
  readonly path: readonly (string | number)[];
  /** how a fact is known that says nothing of it */
  readonly basis: Basis;
  /** the node a missing key is reported at */
  readonly around: Node | undefined;
}

export const at = (place: Place, key: string | number): Place => ({ ...place, path: [...place.path, key] });

export const printPath = (path: readonly (string | number)[]): string =>
  path.reduce<string>(
    (text, key) => (typeof key === "number" ? `${text}[${key}]` : text === "" ? key : `${text}.${key}`),
    "",
  );

const SHOWN = 60;
export const shorten = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text);

type Said = { readonly got?: string; readonly message: string; readonly hint: string };

const make = (place: Place, node: Node | null | undefined, code: IssueCode, said: Said): Issue => {
  const offset = (node ?? place.around)?.range?.[0];
  const { line, col } = offset === undefined ? { line: 1, col: 1 } : place.lines.linePos(offset);
  return {
    code,
    path: printPath(place.path),
    line: Math.max(line, 1),
    column: Math.max(col, 1),
    got: shorten(said.got ?? ""),
    message: said.message,
    hint: said.hint,
    ...(place.file === undefined ? {} : { file: place.file }),
  };
};

/** Notes one mistake. */
export const report = (place: Place, node: Node | null | undefined, code: IssueCode, said: Said): void => {
  place.desk.issues.push(make(place, node, code, said));
};

/** Notes something odd that does not stop the reading. */
export const warn = (place: Place, node: Node | null | undefined, code: IssueCode, said: Said): void => {
  place.desk.warnings.push(make(place, node, code, said));
};
