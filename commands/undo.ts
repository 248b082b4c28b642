import { command } from '#chat/command.ts';

export default command({
  name: 'undo',
  usage: '/undo',
  summary: 'take back the last thing recorded in this chat, again and again',
  examples: ['/undo'],
  help: ['It refuses, with the reason, where a later change stands on it. /log shows what was recorded.'],
  records: true,
  takes: {},
  run: (_, house) => house.journal.undoLast(),
  say: (did) => ({ group: `Taken back: ${did}.` }),
});
