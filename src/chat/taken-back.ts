import type { Reply } from '#core/talk.ts';
import type { Stores } from '#store/house.ts';

/** What is no longer on record is not shown as if it were: its answer says so, and shows it again once put back. */
export function answersFollow({ messages }: Stores, atMs: number) {
  const change = (entry: number | undefined, into: (reply: Reply) => Reply): void => {
    const answer = entry === undefined ? undefined : messages.answerOfEntry(entry);
    if (!answer) return;
    const { door, chatKey, topicKey, personKey, replyToKey, reply, id } = answer;
    const to = { door, chatKey, topicKey, person: { key: personKey, name: '' } };
    const { files: _, ...shown } = reply;
    messages.put(to, replyToKey, into(shown), atMs, id);
  };
  return {
    takenBack: (entry: number, did: string): void =>
      change(entry, ({ group, why = [] }) => ({
        group: `Taken back: ${did}.`,
        why: ['It said:', ...group.split('\n'), ...why],
      })),
    putBack: (entry: number | undefined): void => change(entry, (reply) => reply),
  };
}
