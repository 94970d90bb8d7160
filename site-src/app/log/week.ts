// Dates of the record. A day is the learner's local date, YYYY-MM-DD.
import type { Session } from '../types.ts';

export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The last seven days, the oldest first, each with its number of sessions. */
export function week(sessions: Session[], end = today()): { day: string; n: number }[] {
  return Array.from({ length: 7 }, (_, i) => {
    const day = new Date(Date.parse(`${end}T00:00Z`) - (6 - i) * 864e5).toISOString().slice(0, 10);
    return { day, n: sessions.filter((s) => s.day === day).length };
  });
}
