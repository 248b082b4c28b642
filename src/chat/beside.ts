import type { Choice, Reply } from '#core/talk.ts';
import { fold } from '#words/near.ts';
import type { Chosen } from './chosen.ts';

/** What was forgiven, and what the answer leaves aside and does not name itself. */
export function withRemarks(reply: Reply, { remark, aside = [] }: Chosen): Reply {
  const told = fold(reply.group);
  const left = aside.filter((words) => !told.includes(fold(words)));
  const said = [
    ...(remark === undefined ? [] : [remark]),
    ...(left.length > 0 ? [`left aside: ${left.map((words) => `"${words}"`).join(', ')}`] : []),
  ];
  return said.length === 0 ? reply : { ...reply, group: `${reply.group}\n(${said.join('; ')})` };
}

/** Buttons for what a message says besides, or may mean. */
export function withOffers(reply: Reply, more: readonly Choice[], isSaid: boolean): Reply {
  const own = reply.buttons ?? [];
  const further = more.filter(({ request }) => own.every((one) => !isSame(one.request, request)));
  if (further.length === 0) return reply;
  return {
    ...reply,
    group: isSaid ? `${reply.group}\nNot recorded yet: the rest of what you said.` : reply.group,
    buttons: [...further, ...own],
  };
}

/** Two buttons that would do the same are one. */
const isSame = (one: string, other: string): boolean => fold(one) === fold(other);

/** What a button shows at most. Chosen. */
const longestLabel = 60;

export const shortened = (label: string): string =>
  label.length > longestLabel ? `${label.slice(0, longestLabel - 1)}…` : label;
