import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
  type YAMLMap,
} from "yaml";
import { migrate } from "./migrate.ts";
import { type Desk, type Place, report, shorten } from "./place.ts";

export interface Source {
  readonly document: Document;
  readonly root: YAMLMap;
  readonly place: Place;
}

const LONGEST = 200_000;
const DEEPEST = 40;
const DEEPEST_IN_A_LINE = 10;

export const yamlOptions = {
  version: "1.2",
  schema: "core",
  uniqueKeys: false,
  merge: false,
  prettyErrors: false,
  logLevel: "error",
} as const;

/** Brackets and dashes that open more levels than any job has; counted before parsing, so that no text can exhaust the parser. */
const tooDeep = (text: string): boolean => {
  let depth = 0;
  for (const sign of text) {
    if (sign === "[" || sign === "{") depth++;
    else if (sign === "]" || sign === "}") depth = Math.max(0, depth - 1);
    if (depth > DEEPEST) return true;
  }
  return (
    new RegExp(`(?:[-?:][ \\t]+){${DEEPEST_IN_A_LINE}}`).test(text) ||
    text.split("\n").some((line) => /^ {400}/.test(line))
  );
};

const SYNTAX: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: "Indent with spaces.",
  BAD_INDENT: "Keys of one group begin in the same column.",
  BLOCK_AS_IMPLICIT_KEY: "Put a text that holds a colon in quotes.",
  MISSING_CHAR: "Check quotes, brackets and colons on this line and the one before.",
  BAD_SCALAR_START: "Put the value in quotes.",
};

const reportSyntax = (place: Place, error: YAMLError): void => {
  const node = { range: [error.pos[0], error.pos[0], error.pos[0]] } as unknown as Node;
  if (error.code === "MULTIPLE_DOCS") {
    const hint = "Keep one job per file and take the line --- away.";
    report(place, node, "several-documents", { message: "A second document begins here.", hint });
    return;
  }
  const tab = error.code === "TAB_AS_INDENT";
  report(place, node, tab ? "tabs" : "syntax", {
    message: tab
      ? "This line is indented with a tab."
      : `The file cannot be read from here on: ${error.message.replace(/\.?$/, ".")}`,
    hint: SYNTAX[error.code] ?? "Check quotes, brackets, colons and indentation on this line and the one before.",
  });
};

/** Values that stand for other values are refused: a few lines of them can unfold into gigabytes. */
const reportReferences = (document: Document, place: Place): boolean => {
  const before = place.desk.issues.length;
  visit(document, {
    Node: (_, node) => {
      const tagged = isScalar(node) && node.tag !== undefined;
      const anchored = !isAlias(node) && node.anchor !== undefined;
      if (isAlias(node) || anchored || tagged)
        report(place, node as Node, "alias", {
          got: shorten(isAlias(node) ? `*${node.source}` : anchored ? `&${node.anchor}` : String(node.tag)),
          message: "Anchors, aliases and tags are not part of the form.",
          hint: "Write the value out where it is needed.",
        });
      return place.desk.issues.length - before > 20 ? visit.BREAK : undefined;
    },
  });
  return place.desk.issues.length > before;
};

const parse = (text: string, lines: LineCounter): Document | "too-deep" => {
  try {
    return parseDocument(text, { ...yamlOptions, lineCounter: lines }) as unknown as Document;
  } catch (error) {
    if (error instanceof RangeError) return "too-deep";
    throw error;
  }
};

/** A file's text as a tree whose nodes know their lines, brought to the newest version; undefined after reporting. */
export const parseSource = (
  text: string,
  desk: Desk,
  file?: string,
  within: Place["within"] = "job",
): Source | undefined => {
  const lines = new LineCounter();
  const place: Place = { desk, lines, file, within, path: [], basis: { kind: "stated" }, around: undefined };
  if (text.length > LONGEST) {
    report(place, undefined, "too-large", {
      got: String(text.length),
      message: `The file has ${text.length} characters; ${LONGEST} are read.`,
      hint: "A job is a few pages; is this the right file?",
    });
    return undefined;
  }
  const document = tooDeep(text) ? "too-deep" : parse(text, lines);
  if (document === "too-deep") {
    report(place, undefined, "too-deep", {
      message: `Lists or groups stand inside each other more than ${DEEPEST} deep.`,
      hint: "No job needs that; is this the right file?",
    });
    return undefined;
  }
  const mistake = document.errors[0] ?? document.warnings[0];
  if (mistake) {
    reportSyntax(place, mistake);
    return undefined;
  }
  if (reportReferences(document, place)) return undefined;
  const root = document.contents;
  if (root === null || (isScalar(root) && root.value === null)) {
    report(place, undefined, "empty-file", {
      message: "The file is empty.",
      hint: "Begin with the line floorworthy: 1.",
    });
    return undefined;
  }
  if (!isMap(root)) {
    report(place, root as Node, "not-a-group", {
      message: "The file does not begin with keys.",
      hint: "Begin with the line floorworthy: 1.",
    });
    return undefined;
  }
  migrate(root as YAMLMap, place);
  return { document, root: root as YAMLMap, place: { ...place, around: root as Node } };
};
