import type { Assessment, Outcome } from "@floorworthy/assess";

export const outcomeWords: Readonly<Record<Outcome, string>> = {
  accept: "Accept",
  "accept-if": "Accept, if",
  "lighter-lift": "Lighter lift",
  shift: "Shift",
  pour: "Pour",
  wait: "Wait",
  refer: "Refer",
  refuse: "Refuse",
  "out-of-service": "Out of service",
  hold: "Hold",
};

export const pageWords: Readonly<Record<Assessment["page"]["verdict"], string>> = {
  meets: "meets the page",
  fails: "does not meet the page",
  "not-shown": "not shown yet",
  "not-judged": "not judged",
};

export const marginWords: Readonly<Record<Assessment["margin"]["verdict"], string>> = {
  ample: "ample",
  enough: "enough",
  thin: "thin",
  short: "short",
  "not-computed": "not computed",
};
