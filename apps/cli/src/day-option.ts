/** A calendar day given as an option, or today; undefined after the mistake has been printed. */
export const dayOf = (option: string, written: string | undefined): string | undefined => {
  if (written === undefined) return new Date().toISOString().slice(0, 10);
  const day = /^\d{4}-\d{2}-\d{2}$/.test(written) ? new Date(written) : undefined;
  if (day && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(written)) return written;
  console.error(`${option} ${written}: this is not a day. Write year-month-day, such as 2026-11-25.`);
  return undefined;
};
