import { command } from '#chat/command.ts';
import { houseSettings, settingNamed } from '#settings/house-settings.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, part } from '#words/parts.ts';
import { movedLines, redateStock } from '#house/keeping.ts';

/** One setting and its new value. */
const change = part('a setting and its value, such as altitude 340 m', (reading, names) => {
  if ([...reading.left()].length === 0) return undefined;
  const setting = settingNamed(reading);
  if (!setting) {
    const typed = reading.rest();
    const measure = /^(\p{L}+)\s+(?:is\s+)?(\d[\d.,]*\s*(?:ml|l|dl|cl))$/iu.exec(typed);
    if (measure)
      throw new Refusal(
        'a-measure',
        `A measure of yours is told otherwise: /our ${measure[1]!} is ${measure[2]!}`,
      );
    throw new Refusal(
      'no-such-setting',
      `"${typed}" is no setting of the house. There are: ${houseSettings.map((s) => s.words[0]).join(', ')}.`,
    );
  }
  const changes = setting.read(reading, names);
  if (changes.length === 0) {
    throw new Refusal(
      'no-value',
      `I read "${setting.words[0]}", but no value for it that I can use: ${setting.example}`,
    );
  }
  return { setting, changes };
});

export default command({
  name: 'house',
  alsoCalled: ['settings', 'set'],
  usage: '/house [setting value]',
  summary: 'what the house has told about itself; one setting at a time',
  examples: ['/house altitude 340 m', ...houseSettings.slice(1).map((s) => s.example)],
  records: true,
  takes: { change: optional(change) },
  run: ({ change: told }, house) => {
    if (!told) return { settings: house.settings, told, moved: [] };
    for (const { name, value } of told.changes)
      house.told.set(name, typeof value === 'function' ? value(house.settings) : value);
    return { settings: house.told.all(), told: told.setting, moved: redateStock(house, house.settings) };
  },
  say: ({ settings, told, moved }) => {
    if (!told) {
      return {
        group: [
          'This house:',
          ...houseSettings.map((setting) => setting.say(settings)),
          'Change one: /house altitude 340 m',
        ].join('\n'),
      };
    }
    return {
      group: [`Noted: ${told.say(settings)}.`, ...movedLines(moved)].join('\n'),
      did: `set ${told.say(settings)}`,
    };
  },
});
