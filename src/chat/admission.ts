import { timingSafeEqual } from 'node:crypto';
import type { Message, Reply } from '#core/talk.ts';
import type { Stores } from '#store/house.ts';
import { sayList } from '#words/say.ts';
import { readScanPayload } from '#words/scan.ts';

const membersOnly = 'I talk with members of an admitted household only. Write a request in your group first.';
const notAdmitted =
  'This group is not admitted yet. Whoever runs this bot has the code.\nFor example: /admit CODE';

function same(a: string, b: string): boolean {
  const [x, y] = [Buffer.from(a), Buffer.from(b)];
  return x.length === y.length && timingSafeEqual(x, y);
}

/**
 * What a chat that belongs to no household hears. A stranger learns nothing: only /admit, /start and /help are
 * answered; wrong codes slow the one who tries, who is told so once.
 * @param code the code that only the bot's owner sees
 * @returns undefined for silence
 */
export function admission(stores: Stores, message: Message, code: string): Reply | undefined {
  const { households } = stores;
  const asked = /^\/?(admit|start|help)\b\s*(.*)$/is.exec(message.text.trim());
  if (!asked || message.isEdit) return undefined;
  const typed = asked[2]!.trim();
  if (message.isPrivate) return privately(stores, message, typed);
  if (asked[1]!.toLowerCase() !== 'admit') {
    return { group: notAdmitted };
  }
  const tried = households.wrongCodes(message, message.sentAtMs - triesMs);
  if (tried.length >= mostTries) return undefined;
  if (!same(typed.toLowerCase(), code.toLowerCase())) {
    households.wrongCode(message);
    const isLast = tried.length + 1 >= mostTries;
    const waitMin = Math.ceil(((tried[0] ?? message.sentAtMs) + triesMs - message.sentAtMs) / 60_000);
    const wait = isLast
      ? ` That was too often: I take no code from you for ${waitMin} min. Others may try.`
      : '';
    return { group: `That is not the code. It is printed where the bot was started.${wait}` };
  }
  const household = households.admit(message);
  households.member(household, message);
  return {
    group:
      'Admitted. This group is a household now, and everything it records stays here.\nStart with a recipe, for example:\n/recipe Barley soup, 6 servings\n300 g pearl barley\n4 carrots\n1 l vegetable stock',
  };
}

/** So many wrong codes in such a time, and no more are taken from whoever tried. Chosen. */
const mostTries = 5;
const triesMs = 3_600_000;

/** A code typed where none is needed any more. */
export const admittedAlready = (message: Message): Reply | undefined =>
  /^\/admit\b/i.test(message.text.trim()) && !message.isEdit && message.button === null
    ? { group: 'This chat is admitted already. /help shows what I do.' }
    : undefined;

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

/** A private chat speaks for one household; a member of several says which, and may change it with /start. */
function privately(stores: Stores, message: Message, words: string): Reply | undefined {
  const own = stores.households.ofPerson(message.door, message.person.key);
  if (own.length === 0) return { group: membersOnly };
  const chosen = own.length === 1 ? own[0] : own.find((household) => words === `household ${household}`);
  if (chosen === undefined) {
    const labels = toldApart(stores, own, message);
    return {
      group: 'You belong to several households. Which one shall this chat speak for?',
      buttons: own.map((household, i) => {
        return {
          label: labels[i]!,
          request: `/start household ${household}`,
        };
      }),
    };
  }
  stores.households.join(message, chosen);
  const title = toldApart(stores, own, message)[own.indexOf(chosen)]!;
  const other = own.length > 1 ? ' /start chooses another household.' : '';
  return {
    group: `This chat speaks for ${title} now. Requests work here without the slash; /help lists them.${other}`,
  };
}

/** Households by their groups' titles; those of one title by who else is there, and by what was last done. */
function toldApart(stores: Stores, own: readonly number[], { person }: Message): string[] {
  const titles = own.map((household) => stores.households.title(household));
  const withPeople = own.map((household, i) => {
    const isTwin = titles.some((title, j) => j !== i && title === titles[i]);
    const others = stores.households.members(household).filter(({ name }) => name !== person.name);
    if (!isTwin) return titles[i]!;
    return `${titles[i]!} with ${sayList(others.slice(0, 2).map(({ name }) => name)) || 'nobody else'}`;
  });
  return withPeople.map((title, i) => {
    if (!withPeople.some((other, j) => j !== i && other === title)) return title;
    const did = stores.journal.latest(own[i]!, 1)[0]?.did ?? 'nothing yet';
    return `${title}: ${did}`;
  });
}

/**
 * A private chat of somebody who belongs to several households: /start asks again which one it speaks for.
 * @returns undefined for everything else
 */
export function choosesAgain(stores: Stores, message: Message): Reply | undefined {
  const asked = /^\/start(?:\s+(household \d+))?\s*$/i.exec(message.text.trim());
  if (!message.isPrivate || message.isEdit || !asked) return undefined;
  if (stores.households.ofPerson(message.door, message.person.key).length < 2) return undefined;
  return privately(stores, message, asked[1]?.toLowerCase() ?? '');
}

/**
 * Whose label was scanned: its link opens a private chat, and every household has a B4-2. Only members see the card, and
 * whether there is such a household stays unsaid.
 * @returns the household; an answer to who is no member of it; undefined when nothing was scanned
 */
export function scanned(stores: Stores, message: Message): number | Reply | undefined {
  const payload = /^\/start\s+(\S+)$/i.exec(message.text.trim())?.[1];
  const scan = payload === undefined ? undefined : readScanPayload(payload);
  if (!scan) return undefined;
  const { door, chatKey, person, isPrivate } = message;
  const own = isPrivate
    ? stores.households.ofPerson(door, person.key)
    : [stores.households.of(door, chatKey)];
  if (own.includes(scan.household)) return scan.household;
  return {
    group: own.length > 0 ? `That label belongs to another household. ${membersOnly}` : membersOnly,
  };
}
