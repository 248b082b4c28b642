import { command } from '#chat/command.ts';
import { calendarEntries } from '#cards/calendar-facts.ts';
import { calendarText } from '#draw/calendar.ts';
import { csv } from '#words/csv.ts';
import { Refusal } from '#core/refusal.ts';
import type { FileOut } from '#core/talk.ts';

/** The chat platform takes files of up to 50 MB. */
const mostBytes = 45_000_000;

const columns = {
  recipes: ['recipe', 'servings', 'pot_g', 'line', 'typed', 'food', 'usda_no', 'grams', 'state'],
  batches: ['batch', 'meal', 'what', 'tray', 'at', 'net_g'],
  pouches: [
    'code',
    'meal',
    'dry_g',
    'sealed_at',
    'checked',
    'volume_ml',
    'absorber_ml',
    'absorber_count',
    'best_by_on',
    'state',
    'gone_at',
    'gone_why',
  ],
} as const;

const captions = {
  recipes: "every recipe's lines",
  batches: 'what was loaded and weighed',
  pouches: 'every pouch there ever was',
} as const;

function file(name: string, type: FileOut['type'], text: string, caption: string): FileOut {
  const bytes = Buffer.from(text);
  if (bytes.length > mostBytes)
    throw new Refusal(
      'too-large',
      `${name} would be larger than the chat takes. Whoever runs the bot has it in the backups.`,
    );
  return { name, type, base64: bytes.toString('base64'), caption };
}

export default command({
  name: 'export',
  usage: '/export',
  summary: "the household's own data as files: all of it as JSON, lists for a spreadsheet",
  examples: ['/export'],
  help: [
    'household.json holds every record, who made it and what can be taken back; "npm run import -- household.json" reads it into an empty database.',
    'recipes.csv, batches.csv and pouches.csv open in a spreadsheet; times are UTC, units are in the names of the columns.',
  ],
  takes: {},
  run: (_, house) => ({
    whole: house.exports.whole(house.nowMs),
    lists: house.exports.lists(),
    calendar: calendarText('Meals for the trail', calendarEntries(house), house.nowMs),
  }),
  say: ({ whole, lists, calendar }) => ({
    group:
      'All that this household recorded, as files. They hold what people eat and must not eat: mind where you put them.',
    files: [
      file(
        'household.json',
        'application/json',
        JSON.stringify(whole, null, 1),
        'everything, to keep or to read in elsewhere',
      ),
      ...(['recipes', 'batches', 'pouches'] as const).map((name) =>
        file(`${name}.csv`, 'text/csv', csv(columns[name], lists[name]), captions[name]),
      ),
      file('tray-to-trail.ics', 'text/calendar', calendar, 'what is ahead, for any calendar'),
    ],
  }),
});
