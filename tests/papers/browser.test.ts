import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../../packages/papers/src");
const files = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));
const importsOf = (file: string) =>
  [...readFileSync(join(root, file), "utf8").matchAll(/from "([^"]+)"/g)].map(([, name]) => name!);
const atTheEdge = (file: string) => /^(pdf|dxf)\//.test(file);

test("drawings, sheets and SVG run in a browser: only pdf/ and dxf/ reach for files and writers", () => {
  expect(files.length).toBeGreaterThan(40);
  for (const file of files.filter((f) => !atTheEdge(f))) {
    for (const name of importsOf(file)) {
      expect(`${file}: ${name}`).not.toMatch(/: (node:|pdfkit|dejavu|@tarikjabiri)|\/(pdf|dxf)\//);
    }
  }
});

test("this check is awake", () => {
  expect(files.filter(atTheEdge).flatMap(importsOf)).toContain("pdfkit");
});
