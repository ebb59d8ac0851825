/** Measures every family and writes the tables into docs/manuals.md, between its marks. */
import { readFileSync, writeFileSync } from "node:fs";
import { developingFamilies, measure, reportFamilies, tablesOf } from "../../tests/manuals/corpus/index.ts";

const SEEDS = [41, 42, 43];
const FILE = "docs/manuals.md";

const put = (text: string, mark: string, content: string): string => {
  const [start, end] = [`<!-- ${mark} -->`, `<!-- /${mark} -->`];
  const [from, to] = [text.indexOf(start), text.indexOf(end)];
  if (from < 0 || to < 0) throw new Error(`${FILE} has no mark ${mark}`);
  return `${text.slice(0, from + start.length)}\n\n${content}\n\n${text.slice(to)}`;
};

const main = async (): Promise<void> => {
  const report = await measure(reportFamilies, SEEDS);
  const developing = await measure(developingFamilies, SEEDS);
  const text = put(readFileSync(FILE, "utf8"), "report", tablesOf(report));
  writeFileSync(FILE, put(text, "developing", tablesOf(developing).split("\n\n")[0]!));
  console.log(tablesOf(report));
};

void main();
