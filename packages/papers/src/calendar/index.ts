export { type CalendarEvent, type CalendarOptions, calendar } from "./calendar.ts";
