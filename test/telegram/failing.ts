import { type OpenDoor, openDoor } from './group.ts';
import type { Fault } from './platform.ts';
import { realRequests, testRequests } from './requests.ts';

const opened: OpenDoor[] = [];

export const endAll = () => Promise.all(opened.map((door) => door.end()));

/** A door with the requests for tests, and a second group of the same household. */
export async function start() {
  const door = await openDoor({ commands: [...realRequests, ...testRequests()] });
  opened.push(door);
  const other = door.platform.chat({ id: -1002222222222, type: 'supergroup', title: 'Cabin' });
  const household = door.house.house.stores.households.of('telegram', String(door.group.id))!;
  const joins = {
    door: 'telegram',
    chatKey: String(other.id),
    chatTitle: 'Cabin',
    isPrivate: false,
    sentAtMs: 0,
  };
  door.house.house.stores.households.join(joins as never, household);
  return { ...door, other };
}

export const sends = ({ platform }: OpenDoor, chatId: number) =>
  platform.calls.filter(
    ({ method, payload }) => method.startsWith('send') && payload.fields['chat_id'] === chatId,
  );

/** Something that goes wrong with the first calls of a method in one chat. */
export function failing(door: OpenDoor, chatId: number, faults: Fault[], method = 'sendMessage'): void {
  door.platform.fault = (called, { fields }) =>
    called === method && fields['chat_id'] === chatId ? faults.shift() : undefined;
}

export const outbox = ({ house }: OpenDoor) =>
  house.db.prepare('SELECT chat_key AS chat, state, why_dropped AS why FROM outbox ORDER BY id').all() as {
    chat: string;
    state: string;
    why: string | null;
  }[];

export const slowDown = (seconds: number): Fault => ({
  answer: {
    status: 429,
    description: `Too Many Requests: retry after ${seconds}`,
    parameters: { retry_after: seconds },
  },
});
