import ical, { ICalAlarmType } from "ical-generator";

/** A day on which something has to be done. Whole days: a garage has no time zone. */
export interface CalendarEvent {
  /** stable, so that a calendar read in again replaces the day instead of doubling it; letters, figures and dashes */
  readonly id: string;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly title: string;
  readonly detail?: string;
  readonly place?: string;
  /** reminders, in whole days before */
  readonly remindDaysBefore?: readonly number[];
}

export interface CalendarOptions {
  /** the moment the calendar was made, e.g. 2026-11-25 or 2026-11-25T08:00:00Z: an argument, so that the same input gives the same bytes */
  readonly stamp: string;
  readonly name?: string;
}

const DAY = 86_400;

/**
 * An iCalendar file [rfc-5545] of all-day events with reminders.
 * Throws (a bug of the caller) where a date or the stamp is not one, or two events have one id.
 */
export const calendar = (events: readonly CalendarEvent[], { stamp, name }: CalendarOptions): string => {
  const ids = events.map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) throw new Error(`calendar: two events have the id "${twice}"`);
  const file = ical({ prodId: { company: "Floorworthy", product: "rounds" }, ...(name ? { name } : {}) });
  for (const { id, date, title, detail, place, remindDaysBefore = [] } of events) {
    const event = file.createEvent({
      id: `${id}@floorworthy`,
      start: day(date),
      stamp: day(stamp),
      allDay: true,
      summary: title,
      ...(detail ? { description: detail } : {}),
      ...(place ? { location: place } : {}),
    });
    for (const days of remindDaysBefore)
      event.createAlarm({ type: ICalAlarmType.display, trigger: days * DAY, description: title });
  }
  return `${file.toString()}\r\n`;
};

const day = (text: string): Date => {
  const date = new Date(text);
  if (Number.isNaN(date.getTime())) throw new Error(`calendar: "${text}" is not a date`);
  return date;
};
