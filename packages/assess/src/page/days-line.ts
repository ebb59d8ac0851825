import { strengthStillComing } from "../cure/wait.ts";
import { type Line, notAsked } from "./line.ts";

const [id, title] = ["days", "Days between pouring and drilling"];

/** From here on years are said, days. */
const LONG = 730;

export const daysLine: Line = (job, { age, thickness }) => {
  const asked = job.lift.asks.days;
  if (!asked.known) {
    const coming = strengthStillComing(job);
    return coming
      ? {
          id,
          title,
          result: "fails",
          asked: "the strength first",
          found: coming,
          why: "Counted from the temperatures told.",
        }
      : notAsked(id, title);
  }
  const line = { id, title, asked: `at least ${Math.ceil(asked.high)} days` };
  if (age.days === undefined) {
    return job.floor.state === "to-be-poured" || thickness.some(({ zone }) => zone?.state === "proposed")
      ? {
          ...line,
          result: "not-shown",
          found: "not poured yet",
          why: "Drilling waits for the maker's days after the pour.",
        }
      : { ...line, result: "not-shown", found: "age not known", why: "Nobody said when this panel was poured." };
  }
  const found = `${age.days < LONG ? `${Math.floor(age.days)} days` : `${Math.floor(age.days / 365.25)} years`}${age.poured ? ` since ${age.poured}` : ""}`;
  if (age.days < asked.high)
    return { ...line, result: "fails", found, why: "Counted from the last pour of the concrete under the bases." };
  const coming = strengthStillComing(job);
  return coming
    ? {
        ...line,
        result: "fails",
        found: `${found}, but ${coming}`,
        why: "The maker's days count for concrete that was kept warm; this one was told to be cold. A field-cured cylinder settles it.",
      }
    : { ...line, result: "meets", found, why: "Counted from the last pour of the concrete under the bases." };
};
