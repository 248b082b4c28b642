import type { Note, Reply } from '#core/talk.ts';

/** What was told to a chat a while ago and still stands there. */
export interface Told {
  readonly heed: readonly string[];
  readonly notes: readonly Note[];
}

/** What was said so lately need not be said again. Chosen. */
export const saidLatelyMs = 10 * 60_000;

const noteKey = ({ who, text }: Note): string => `${who}: ${text}`;

/**
 * Puts what is to be heeded behind the answer, and folds what the chat was told minutes before in the same words. What
 * somebody must not have is said each time.
 */
export function saidOnce(reply: Reply, told: Told): Reply {
  const { heed = [], notes = [] } = reply;
  if (heed.length + notes.length === 0) return reply;
  const before = new Set([...told.heed, ...told.notes.map(noteKey)]);
  const isAgain = (note: Note) => !note.bars && before.has(noteKey(note));
  const fresh = heed.filter((line) => !before.has(line));
  const again = [...notes.filter(isAgain).map(noteKey), ...heed.filter((line) => before.has(line))];
  const { heed: _, notes: __, ...rest } = reply;
  const left = notes.filter((note) => !isAgain(note));
  const behind = (group: string) => [group, ...fresh].join('\n');
  const [first, ...others] = reply.pages ?? [];
  return {
    ...rest,
    group: behind(reply.group),
    ...(again.length === 0 ? {} : { why: [...again, ...(reply.why ?? [])] }),
    ...(left.length === 0 ? {} : { notes: left }),
    ...(fresh.length === 0 ? {} : { heed: fresh }),
    ...(first ? { pages: [{ ...first, group: behind(first.group) }, ...others] } : {}),
  };
}
