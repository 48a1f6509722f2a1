/** A day in words, 30 November 2026; empty for a text that is none. */
export function dayInWords(iso: string): string {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(iso) ? new Date(`${iso}T12:00:00Z`) : undefined;
  return day === undefined || Number.isNaN(day.getTime())
    ? ''
    : day.toLocaleDateString('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
}
