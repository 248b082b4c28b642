import { command } from '#chat/command.ts';
import { called, nearest } from '#chat/called.ts';
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
    if (about === undefined) return helpAll(house.requests);
    const name = /^\/?([\p{L}\p{N}_]*)/u.exec(about)![1]!.toLowerCase();
    const found = called(name, house.requests);
    if (found) return helpOn(found);
    const meant = nearest(name, house.requests);
    const near = meant ? ` Did you mean /help ${meant.name}?` : '';
    throw new Refusal(
      'no-such-request',
      `There is no request called "${about}".${near} /help lists them all.`,
    );
  },
  say: (text) => ({ group: text }),
});
