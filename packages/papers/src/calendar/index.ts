export { type CalendarEvent, type CalendarOptions, calendar } from "./calendar.ts";
export { roundsCalendar } from "./rounds-calendar.ts";
