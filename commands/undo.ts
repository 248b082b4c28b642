import { command } from '#chat/command.ts';
import { barsLost, liftedByTap } from '#house/lifting.ts';
import { sure } from '#words/sure.ts';

export default command({
  name: 'undo',
  usage: '/undo',
  summary: 'take back the last thing recorded in this chat, again and again',
  examples: ['/undo'],
  help: [
    'It refuses, with the reason, where a later change stands on it. /log shows what was recorded.',
    'Where it would let somebody have again what must never be served to them, a grown-up confirms it by a tap.',
  ],
  records: true,
  takes: { sure },
  run: ({ sure: isSure }, house) => {
    const before = house.eaters.all();
    const did = house.journal.undoLast();
    // Asked about after the fact: a question takes back the taking back.
    for (const { name, lost } of barsLost(before, house.eaters.all()))
      liftedByTap(house, name, lost, isSure === true, '');
    return did;
  },
  say: (did) => ({ group: `Taken back: ${did}.` }),
});
