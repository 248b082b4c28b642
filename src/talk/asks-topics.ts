import { ask, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';
import { kitchenTopics } from './topics-kitchen.ts';
import { otherTopics } from './topics-trips.ts';

/** Questions told by their topic, whatever their wording. */
export const topical: readonly Reader[] = [...kitchenTopics, ...otherTopics].map((topic) => (look) => {
  if (!topic.evenUnasked && !isAsking(look)) return undefined;
  if (!topic.cue.test(look.folded) || topic.not?.test(look.folded)) return undefined;
  const words = topic.words(look);
  return words === undefined ? undefined : ask(topic.means, words, topic.score);
});
