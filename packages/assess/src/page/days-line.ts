import { type Line, notAsked } from "./line.ts";

const [id, title] = ["days", "Days between pouring and drilling"];

export const daysLine: Line = (job, { age }) => {
  const asked = job.lift.asks.days;
  if (!asked.known) return notAsked(id, title);
  const line = { id, title, asked: `at least ${Math.ceil(asked.high)} days` };
  if (age.days === undefined) {
    return job.floor.state === "to-be-poured"
      ? {
          ...line,
          result: "not-shown",
          found: "not poured yet",
          why: "Drilling waits for the maker's days after the pour.",
        }
      : { ...line, result: "not-shown", found: "age not known", why: "Nobody said when this panel was poured." };
  }
  return {
    ...line,
    result: age.days >= asked.high ? "meets" : "fails",
    found: `${Math.floor(age.days)} days${age.poured ? ` since ${age.poured}` : ""}`,
    why: "Counted from the last pour of the concrete under the bases.",
  };
};
