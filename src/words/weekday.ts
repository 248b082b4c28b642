const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

/** 0 to 6 for 'monday', 'mon', 'weds'…; −1 for anything else. */
export function weekdayNamed(word: string): number {
  if (word.length < 3) return -1;
  const full = word
    .replace(/^weds$/, 'wed')
    .replace(/^tues$/, 'tue')
    .replace(/^thurs?$/, 'thu');
  return weekdays.findIndex((day) => day === full || (full.length === 3 && day.startsWith(full)));
}
