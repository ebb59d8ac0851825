import type { Job } from "@floorworthy/job";
import type { PageAnswer, PageLine } from "../assessment.ts";
import type { Facts } from "../facts/facts.ts";
import { crackStateLine } from "./crack-state-line.ts";
import { daysLine } from "./days-line.ts";
import { crackLine, edgeLine, jointLine } from "./distance-lines.ts";
import { reinforcementLine, slopeLine } from "./floor-lines.ts";
import type { Line } from "./line.ts";
import { withManual } from "./manual-line.ts";
import { pipeLine } from "./pipe-line.ts";
import { ceilingLine, wallLine } from "./room-lines.ts";
import { strengthLine } from "./strength-line.ts";
import { thicknessLine } from "./thickness-line.ts";
import { footingLine, oneSlabLine, underPlateLine } from "./under-plate-lines.ts";

/** What makers print. */
const printed: readonly Line[] = [
  thicknessLine,
  strengthLine,
  daysLine,
  edgeLine,
  jointLine,
  crackLine,
  wallLine,
  ceilingLine,
  reinforcementLine,
  slopeLine,
];

/** What no page prints and every page takes for granted; shown only where there is something to say. */
const understood: readonly Line[] = [oneSlabLine, footingLine, crackStateLine, underPlateLine, pipeLine];

/** The maker's page, line by line, in the order of the gates. */
export const pageOf = (job: Job, facts: Facts): PageAnswer => {
  const judged = (lines: readonly Line[]): PageLine[] => lines.map((line) => withManual(job, line(job, facts)));
  const [ofMaker, ofPractice] = [judged(printed), judged(understood)];
  const lines = [
    ...ofMaker.slice(0, 1),
    ...ofPractice.slice(0, 3),
    ...ofMaker.slice(1, 6),
    ...ofPractice.slice(3),
    ...ofMaker.slice(6),
  ];
  return { verdict: verdictOf(ofMaker, ofPractice), lines };
};

/** A page nobody has read is not met by a floor without faults. */
const verdictOf = (ofMaker: readonly PageLine[], ofPractice: readonly PageLine[]): PageAnswer["verdict"] => {
  const asked = ofMaker.filter((line) => line.result !== "not-asked");
  const has = (result: PageLine["result"]): boolean => [...asked, ...ofPractice].some((line) => line.result === result);
  if (asked.length === 0) return "not-judged";
  return has("fails") ? "fails" : has("not-shown") ? "not-shown" : "meets";
};
