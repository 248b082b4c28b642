import { command } from '#chat/command.ts';
import { address } from '#chat/address.ts';
import { helpAll, helpOn } from '#chat/help.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, restOfText } from '#words/parts.ts';

export default command({
  name: 'help',
  alsoCalled: ['start'],
  usage: '/help [request]',
  summary: 'every request, or one of them with examples',
  examples: ['/help', '/help seal'],
  takes: { about: optional(restOfText('a request')) },
  run: ({ about }, house) => {
    if (about === undefined) return helpAll(house.commands);
    const found = address(`/${about.replace(/^\//, '')}`, true, house.commands);
    if (found.is === 'request') return helpOn(found.command);
    const near = found.is === 'unknown' && found.near ? ` Did you mean /help ${found.near.name}?` : '';
    throw new Refusal(
      'no-such-request',
      `There is no request called "${about}".${near} /help lists them all.`,
    );
  },
  say: (text) => ({ group: text }),
});
