/** Calendar dates as YYYY-MM-DD, counted in whole days; no clock is read. */
const DAY = 86_400_000;

export const daysBetween = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / DAY);

export const addDays = (date: string, days: number): string =>
  new Date(Date.parse(date) + Math.ceil(days) * DAY).toISOString().slice(0, 10);
