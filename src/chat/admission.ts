import { timingSafeEqual } from 'node:crypto';
import type { Message, Reply } from '#core/talk.ts';
import type { Stores } from '#store/house.ts';

const notAdmitted = 'This group is not admitted yet. Whoever runs this bot has the code: /admit CODE';

function same(a: string, b: string): boolean {
  const [x, y] = [Buffer.from(a), Buffer.from(b)];
  return x.length === y.length && timingSafeEqual(x, y);
}

/**
 * What a chat that belongs to no household hears. A stranger learns nothing: only /admit, /start and /help are
 * answered, wrong codes are counted, and after too many there is silence.
 * @param code the code that only the bot's owner sees
 * @returns undefined for silence
 */
export function admission(stores: Stores, message: Message, code: string): Reply | undefined {
  const { households } = stores;
  const asked = /^\/?(admit|start|help)\b\s*(.*)$/is.exec(message.text.trim());
  if (!asked || message.isEdit) return undefined;
  const typed = asked[2]!.trim();
  if (message.isPrivate) return privately(stores, message);
  if (asked[1]!.toLowerCase() !== 'admit') {
    return { group: notAdmitted };
  }
  if (households.tooManyTries(message)) return undefined;
  if (!same(typed.toLowerCase(), code.toLowerCase())) {
    households.wrongCode(message);
    return { group: 'That is not the code. It is printed where the bot was started.' };
  }
  const household = households.admit(message);
  households.member(household, message);
  return {
    group:
      'Admitted. This group is a household now, and everything it records stays here.\nStart with a recipe, for example:\n/recipe Barley soup, 6 servings\n300 g pearl barley\n4 carrots\n1 l vegetable stock',
  };
}

/** The bot came into a group: one line, once. */
export function arrival(stores: Stores, message: Message): void {
  stores.together(() => {
    if (!stores.messages.firstSight(message.door, message.deliveryKey, message.sentAtMs)) return;
    const isAdmitted = stores.households.of(message.door, message.chatKey) !== undefined;
    const group = isAdmitted
      ? 'Back. All records of this group are still here; /stock shows what there is.'
      : notAdmitted;
    stores.messages.put(message, null, { group }, message.sentAtMs);
  });
}

function privately(stores: Stores, message: Message): Reply | undefined {
  const own = stores.households.ofPerson(message.door, message.person.key);
  const only = own[0];
  if (only === undefined) {
    return {
      group: 'I talk with members of an admitted household only. Write a request in your group first.',
    };
  }
  stores.households.join(message, only);
  const title = stores.households.title(only);
  return {
    group: `This chat speaks for ${title} now. Requests work here without the slash; /help lists them.`,
  };
}
