import { DateTime } from 'luxon';
import { openOwnHouse } from '../house.ts';
import { openDoor, until, type OpenDoor } from './group.ts';
import type { Sent } from './rules.ts';

/** An answer as it arrived in the chat, with what was said before it. */
export interface Screen {
  readonly asked: string;
  readonly by: string;
  readonly sent: Sent;
}

export interface Played {
  readonly door: OpenDoor;
  readonly screens: readonly Screen[];
}

/** The messages of a written chat, with the moment each is said. */
function messagesIn(chat: string): { by: string; text: string; at: DateTime }[] {
  const said: { by: string; text: string; at: DateTime }[] = [];
  let at = DateTime.utc(2027, 1, 1);
  for (const line of chat.split('\n')) {
    const clock = /^\[(\d{4}-\d{2}-\d{2} \d{2}:\d{2})\]$/.exec(line)?.[1];
    if (clock !== undefined) at = DateTime.fromSQL(clock, { zone: 'UTC' });
    if (clock !== undefined || line.startsWith('>')) continue;
    const spoken = /^([\p{L}]+): (.*)$/su.exec(line);
    if (spoken) said.push({ by: spoken[1]!, text: spoken[2]!, at });
    else if (line.startsWith('  ') && said.length > 0) said.at(-1)!.text += `\n${line.trim()}`;
  }
  return said;
}

/** Plays a written chat through the door, each message when the one before is answered. */
export async function played(chat: string): Promise<Played> {
  const house = openOwnHouse('2027-01-01 08:00', { admitCode: 'plum-42' });
  const door = await openDoor({}, {}, undefined, house);
  const screens: Screen[] = [];
  const people = new Map<string, { id: number; is_bot: false; first_name: string }>();
  for (const { by, text, at } of messagesIn(chat)) {
    const from = people.get(by) ?? {
      id: 5_000_000_100 + people.size,
      is_bot: false as const,
      first_name: by,
    };
    people.set(by, from);
    const before = door.answers(door.group).length;
    const typed = text.startsWith('/') ? text : `@TrailTestBot ${text}`;
    door.say(door.group, typed, { from, date: Math.floor(at.toSeconds()) });
    await until(() => isThrough(door));
    for (const sent of door.answers(door.group, before)) screens.push({ asked: text, by, sent });
  }
  return { door, screens };
}

/** Everything said is handled, and everything answered has arrived, lists too. */
export function isThrough({ platform, house }: OpenDoor): boolean {
  const has = (sql: string) => house.db.prepare(sql).get() !== undefined;
  return (
    platform.unconfirmed().length === 0 &&
    !has("SELECT 1 FROM outbox WHERE state = 'waiting'") &&
    !has('SELECT 1 FROM unfinished')
  );
}

/** A message without what is folded away. */
export function unfolded({ text, entities }: Pick<Sent, 'text' | 'entities'>): string {
  const folds = entities.filter(({ type }) => type === 'expandable_blockquote');
  return folds
    .toReversed()
    .reduce((left, { offset, length }) => left.slice(0, offset) + left.slice(offset + length), text)
    .replace(/[\u2060\u2068\u2069]/gu, '')
    .trim();
}
