import { command } from '#chat/command.ts';
import { calendarEntries } from '#cards/calendar-facts.ts';
import { calendarText } from '#draw/calendar.ts';
import { sayCount } from '#words/say.ts';

export default command({
  name: 'calendar',
  alsoCalled: ['ical', 'ics'],
  usage: '/calendar',
  summary: 'trips, drying, weighing and what to eat first, as a file for any calendar',
  examples: ['/calendar'],
  help: [
    'The file is of the open standard (iCalendar). Read in a second time, the same entries change; what is over is left to you.',
  ],
  takes: {},
  run: (_, house) => ({ entries: calendarEntries(house), nowMs: house.nowMs }),
  say: ({ entries, nowMs }) => {
    if (entries.length === 0)
      return { group: 'Nothing is ahead yet: no trip, no load in the dryer, no pouch with a date.' };
    return {
      group: `${sayCount(entries.length, 'entry', 'entries')} for your calendar.`,
      files: [
        {
          name: 'tray-to-trail.ics',
          type: 'text/calendar',
          base64: Buffer.from(calendarText('Meals for the trail', entries, nowMs)).toString('base64'),
          caption: 'open it with your calendar',
        },
      ],
    };
  },
});
