const dayMs = 86_400_000;
const epochMs = Date.UTC(1899, 11, 30);

/** A spreadsheet's serial day as a `Date` whose local clock shows it, as the platform passes dates. */
export function dateFromSerial(serial: number): Date {
  const at = new Date(epochMs + Math.round(serial * dayMs));
  return new Date(
    at.getUTCFullYear(),
    at.getUTCMonth(),
    at.getUTCDate(),
    at.getUTCHours(),
    at.getUTCMinutes(),
    at.getUTCSeconds(),
    at.getUTCMilliseconds(),
  );
}

/** The serial day that a `Date`'s local clock shows. */
export function serialFromDate(date: Date): number {
  const ms = Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
    date.getMilliseconds(),
  );
  return (ms - epochMs) / dayMs;
}

/** Serial of an ISO date, null for any other text or a day that does not exist. */
export function serialFromIso(text: string): number | null {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  if (!parts) return null;
  const ms = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]));
  return new Date(ms).toISOString().slice(0, 10) === text ? (ms - epochMs) / dayMs : null;
}

/** Whether a number format shows a day or a time. */
export function isDateFormat(pattern: string): boolean {
  const bare = pattern.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");
  return /[ymdhs]/i.test(bare) && !/^general$/i.test(bare);
}

/** Whether a number format shows a day, not only a time of day or a duration. */
export function isDayFormat(pattern: string): boolean {
  const bare = pattern.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");
  return isDateFormat(pattern) && (/[yd]/i.test(bare) || !/[hs]|\[[hms]+\]/i.test(pattern));
}

/** The bundle runs in a realm of its own, where `instanceof Date` can fail. */
export function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === "[object Date]";
}

/** ISO text of a serial day: the date, the time of day for a fraction under one, or both. */
export function isoFromSerial(serial: number): string {
  const iso = new Date(epochMs + Math.round(serial * dayMs)).toISOString();
  const time = iso.slice(11, 19).replace(/:00$/, "");
  if (serial >= 0 && serial < 1) return time;
  return Number.isInteger(serial) ? iso.slice(0, 10) : `${iso.slice(0, 10)} ${time}`;
}
