/** The calendar date `days` after another, YYYY-MM-DD; undefined when the date is not one. */
export const dayAfter = (date: string, days: number): string | undefined => {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
  if (!match || !Number.isFinite(days)) return undefined;
  const day = new Date(Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]) + Math.ceil(days)));
  return Number.isNaN(day.getTime()) ? undefined : day.toISOString().slice(0, 10);
};
