import Database from 'better-sqlite3';
import { Bot } from 'grammy';

// What the load bench measures against: a bot that writes one row for each update and answers it, and does nothing else.

const db = new Database(process.env['HOUSEHOLD_DB']);
db.pragma('journal_mode = WAL');
db.pragma('synchronous = FULL');
db.exec('CREATE TABLE IF NOT EXISTS row (id INTEGER PRIMARY KEY, chat INTEGER, text TEXT)');
const insert = db.prepare('INSERT INTO row (chat, text) VALUES (?, ?)');
const bot = new Bot(process.env['TELEGRAM_BOT_TOKEN']!, {
  client: { apiRoot: process.env['TELEGRAM_API_ROOT']! },
});
bot.on('message:text', async (ctx) => {
  insert.run(ctx.chat.id, ctx.message.text);
  await ctx.api.sendMessage(ctx.chat.id, 'Written.');
});
process.once('SIGTERM', () => void bot.stop());
await bot.start({ onStart: () => void process.stdout.write('ready\n') });
