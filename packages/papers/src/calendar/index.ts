export { type CalendarEvent, type CalendarOptions, calendar } from "./calendar.ts";
export { cureCalendar } from "./cure-calendar.ts";
export { roundsCalendar } from "./rounds-calendar.ts";
