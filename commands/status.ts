import { command } from '#chat/command.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCount, sayMoment, sayNumber } from '#words/say.ts';

export default command({
  name: 'status',
  usage: '/status',
  summary: 'for whoever runs the bot: version, waiting answers, last fault, size, last backup',
  examples: ['/status'],
  takes: {},
  run: (_, house) => {
    if (!house.status)
      throw new Refusal(
        'not-yours',
        'Only whoever runs this bot is told that: the person who first admitted a group.',
      );
    return { status: house.status(), nowMs: house.nowMs, zone: house.settings.zone };
  },
  say: ({ status, nowMs, zone }) => {
    const { version, startedAtMs, waiting, givenUp, lastFault, bytes, lastBackupAtMs } = status;
    const hours = Math.max(0, nowMs - startedAtMs) / 3_600_000;
    const up = hours < 48 ? `${sayNumber(Math.round(hours * 10) / 10)} h` : `${Math.floor(hours / 24)} days`;
    return {
      group: [
        `Version ${version}, up for ${up}.`,
        `${sayCount(waiting, 'answer')} waiting to be delivered, ${givenUp} given up.`,
        lastFault
          ? `Last fault, ${sayMoment(lastFault.atMs, zone)}: ${lastFault.line}`
          : 'No fault since the start.',
        `The database takes ${sayNumber(Math.round((bytes / 1_048_576) * 10) / 10)} MB.`,
        lastBackupAtMs === null
          ? 'No backup yet; one is made every day.'
          : `Last backup ${sayMoment(lastBackupAtMs, zone)}.`,
      ].join('\n'),
    };
  },
});
