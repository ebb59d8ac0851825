/** A job nobody has said anything about yet: it reads, and everything in it is open. */
export const firstJob = (today = new Date().toISOString().slice(0, 10)): string => `floorworthy: 1
title: New job
date: ${today}
units: inch-pound
setting: {}
lift:
  name: Lift not chosen yet
  kind: two-post
bay: {}
floor:
  state: standing
`;
