import { Api } from 'grammy';
import { expect, test } from 'vitest';
import type { Outgoing } from '#core/talk.ts';
import type { Lists } from '#doors/telegram-lists.ts';
import { openSender, type Outbox } from '#doors/telegram-sender.ts';

/** An answer that cannot even be drawn, though the platform is well: its text is missing. */
const broken: Outgoing & { nextTryAtMs: number } = {
  id: 7,
  door: 'telegram',
  chatKey: '5',
  topicKey: null,
  replyToKey: null,
  editKey: null,
  reply: {} as Outgoing['reply'],
  buttons: [],
  partsSent: 0,
  tries: 0,
  nextTryAtMs: 0,
};

/** What becomes of it after so many tries. */
async function after(tries: number): Promise<{ dropped: string[]; pausesMs: number[] }> {
  const dropped: string[] = [];
  const pausesMs: number[] = [];
  let head: typeof broken | undefined = { ...broken, tries };
  const never = () => {
    throw new Error('not expected here');
  };
  const outbox: Outbox = {
    heads: () => [],
    head: () => head,
    sent: never,
    sentPart: never,
    tried: (_, nextTryAtMs) => {
      pausesMs.push(nextTryAtMs - Date.now());
      head = undefined;
    },
    dropped: (_, why) => {
      dropped.push(why);
      head = undefined;
    },
    dropChat: never,
    leaveTopic: never,
    notInstead: never,
    dueNow: never,
  };
  const lists: Lists = {
    behind: () => [],
    behindIn: () => undefined,
    now: never,
    shown: never,
    remove: never,
    anew: never,
    pinned: never,
  };
  const sender = openSender({ api: new Api('1:none'), outbox, lists, moved: never, log: () => undefined });
  sender.wake('5');
  await sender.flush(60_000);
  return { dropped, pausesMs };
}

// Five tries, each after twice the pause, are this project's own choice.
test.each([0, 1, 4])('a fault of ours is tried again after %i tries', async (tries) => {
  const { dropped, pausesMs } = await after(tries);
  expect(dropped).toEqual([]);
  expect(pausesMs).toHaveLength(1);
  expect(Math.abs(pausesMs[0]! - 1000 * 2 ** tries)).toBeLessThan(900);
});

test.each([5, 6])('and given up after %i', async (tries) => {
  expect(await after(tries)).toEqual({ dropped: ['a fault of the program; see the log'], pausesMs: [] });
});
