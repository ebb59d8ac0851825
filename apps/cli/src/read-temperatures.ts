import type { LogReading } from "@floorworthy/assess/cure";
import { toBase, type Unit, unitOf } from "@floorworthy/engine/quantities";
import { parse } from "csv-parse/sync";

/** What a logger's file holds: readings in the order of time, and one message for each row left out. */
export type Logged =
  | { readonly ok: true; readonly readings: readonly LogReading[]; readonly skipped: readonly string[] }
  | { readonly ok: false; readonly mistakes: readonly string[] };

interface LogOptions {
  /** day of the pour, YYYY-MM-DD; needed where the file writes dates */
  readonly poured: string | undefined;
}

type TemperatureUnit = Extract<Unit, "°C" | "°F">;
type TimeKind = "date" | "days" | "hours";

interface Columns {
  readonly time: number;
  /** the clock where it stands in a column of its own beside the date */
  readonly clock: number | undefined;
  readonly kind: TimeKind;
  readonly temperature: number;
  readonly unit: TemperatureUnit | undefined;
}

interface Row {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

const MOST_ROWS = 100_000;
const [COLDEST, HOTTEST] = [-50, 90];

const no = (...mistakes: string[]): Logged => ({ ok: false, mistakes });

/**
 * Reads a logger's table: a head row names a column of time (date and time, or days or hours after the pour) and one of
 * temperature with its unit in the head or in every cell. Comma, semicolon or tab; a decimal comma where fields are
 * parted otherwise. A row that cannot be read is left out with a message; a file of which a quarter cannot be read is
 * refused.
 */
export const readTemperatures = (text: string, { poured }: LogOptions): Logged => {
  const clean = text.replace(/^\uFEFF/, "");
  if (clean.trim() === "") return no("the file is empty.");
  const delimiter = delimiterOf(clean);
  let rows: readonly Row[];
  try {
    rows = parse(clean, {
      delimiter,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      info: true,
    }) as unknown as readonly Row[];
  } catch (error) {
    return no(`this is not a table of values: ${(error as Error).message}.`);
  }
  if (rows.length > MOST_ROWS) return no(`${rows.length} rows are more than the ${MOST_ROWS} this program reads.`);
  const head = rows.findIndex(({ record }) => columnsOf(record) !== undefined);
  const columns = head < 0 ? undefined : columnsOf(rows[head]!.record);
  if (!columns)
    return no(
      'no head row names a column of time and one of temperature. Write a first line such as "time, temperature °F".',
    );
  if (columns.kind === "date" && poured === undefined)
    return no("its times are dates, and the job does not say when the concrete was poured (pour.date).");
  const decimal = delimiter === "," ? "." : ",";
  return readRows(rows.slice(head + 1), columns, poured, decimal);
};

const delimiterOf = (text: string): string => {
  const line = text.split(/\r?\n/).find((l) => /temp|°|time|date/i.test(l)) ?? text.split(/\r?\n/)[0]!;
  return ["\t", ";", ","].find((mark) => line.includes(mark)) ?? ",";
};

const columnsOf = (record: readonly string[]): Columns | undefined => {
  const temperature = record.findIndex(
    (name) => /temp|^t\s*[([]?\s*°|°\s*[cf]\b/i.test(name) && !/date|time/i.test(name),
  );
  const timeNamed = (name: string): boolean => /date|time|stamp|\bdays?\b|\bage\b|\bhours?\b/i.test(name);
  const time = record.findIndex(timeNamed);
  if (temperature < 0 || time < 0) return undefined;
  const name = record[time]!;
  const kind: TimeKind = /date|stamp/i.test(name)
    ? "date"
    : /hour|\(h\)|, h$/i.test(name)
      ? "hours"
      : /\bdays?\b|\bage\b|\(d\)|, d$/i.test(name)
        ? "days"
        : "date";
  const clock =
    kind === "date" ? record.findIndex((n, i) => i !== time && i !== temperature && /time|clock/i.test(n)) : -1;
  return { time, clock: clock < 0 ? undefined : clock, kind, temperature, unit: unitIn(record[temperature]!) };
};

const unitIn = (name: string): TemperatureUnit | undefined => {
  const found = /(?:°|deg(?:rees)?\.?|[\s_,([])\s*(celsius|fahrenheit|[cf])(?![a-z])/i.exec(name)?.[1]?.toLowerCase();
  return found === undefined ? undefined : found.startsWith("c") ? "°C" : "°F";
};

const readRows = (rows: readonly Row[], columns: Columns, poured: string | undefined, decimal: string): Logged => {
  const readings: LogReading[] = [];
  const skipped: string[] = [];
  for (const { record, info } of rows) {
    const read = readRow(record, columns, poured, decimal);
    const last = readings.at(-1);
    if (typeof read === "string") skipped.push(`line ${info.lines}: ${read}`);
    else if (last && read.day <= last.day) skipped.push(`line ${info.lines}: not later than the row before; left out.`);
    else readings.push(read);
  }
  if (readings.length < 2) return no(...skipped.slice(0, 5), "fewer than two rows could be read.");
  if (skipped.length * 4 > rows.length)
    return no(
      ...skipped.slice(0, 20),
      `${skipped.length} of ${rows.length} rows could not be read: correct the file first.`,
    );
  if (readings.at(-1)!.day <= 0) return no("the log ends before the day of the pour.");
  return { ok: true, readings, skipped };
};

const readRow = (
  record: readonly string[],
  { time, clock, kind, temperature, unit }: Columns,
  poured: string | undefined,
  decimal: string,
): LogReading | string => {
  const when = [record[time] ?? "", clock === undefined ? "" : (record[clock] ?? "")].join(" ").trim();
  const day = kind === "date" ? dayOfStamp(when, poured!) : plain(when, decimal) / (kind === "hours" ? 24 : 1);
  if (!Number.isFinite(day))
    return `"${when.slice(0, 40)}" is not a ${kind === "date" ? "date such as 2025-02-04 14:30" : `number of ${kind}`}; left out.`;
  const cell = record[temperature] ?? "";
  const parts = /^(.*?[\d.,])\s*(°?\s*[a-z]*\.?)$/i.exec(cell);
  const value = plain(parts?.[1] ?? cell, decimal);
  if (!Number.isFinite(value)) return `"${cell.slice(0, 40)}" is not a temperature; left out.`;
  const own = parts?.[2] ? unitOf(parts[2].replace(/\s/g, "")) : undefined;
  if (parts?.[2] && own !== "°C" && own !== "°F") return `"${cell.slice(0, 40)}" is not a temperature; left out.`;
  const counted = own === "°C" || own === "°F" ? own : unit;
  if (!counted)
    return `"${cell.slice(0, 40)}" has no unit: name it in the head row, such as "temperature °F"; left out.`;
  const celsius = toBase(value, counted);
  if (celsius < COLDEST || celsius > HOTTEST) return `${value} ${counted} is no temperature of concrete; left out.`;
  return { day, temperature: celsius };
};

const plain = (text: string, decimal: string): number => {
  const tidy = (decimal === "," ? text.replace(",", ".") : text).replace("−", "-").trim();
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(tidy) ? Number(tidy) : Number.NaN;
};

const DAY = 86_400_000;

/** Days after midnight of the day of the pour; NaN where the stamp is not one. Site time; zones are not converted. */
const dayOfStamp = (text: string, poured: string): number => {
  const found =
    /^(\d{4})-(\d{2})-(\d{2})(?:[T\s]+(\d{1,2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?\s*([ap]m)?)?\s*(?:Z|[+-]\d{2}:?\d{2})?$/i.exec(
      text,
    );
  if (!found) return Number.NaN;
  const [, y, m, d, hour = "0", minute = "0", second = "0", half] = found;
  const date = new Date(`${y}-${m}-${d}T00:00:00Z`);
  if (Number.isNaN(date.getTime()) || !date.toISOString().startsWith(`${y}-${m}-${d}`)) return Number.NaN;
  const hours = half ? (Number(hour) % 12) + (half.toLowerCase() === "pm" ? 12 : 0) : Number(hour);
  if (hours > 23 || Number(minute) > 59 || Number(second) > 59) return Number.NaN;
  return (date.getTime() - Date.parse(poured)) / DAY + hours / 24 + Number(minute) / 1440 + Number(second) / 86_400;
};
