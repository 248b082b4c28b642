import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { randomUUID } from 'node:crypto';
import { storeTrouble } from '#chat/trouble.ts';
import type { Message, Outgoing } from '#core/talk.ts';
import { isolatedRuns } from './isolate.ts';

export interface TerminalDoor {
  /** Handles one message; the answer waits in the outbox afterwards. A word for the presser comes back at once. */
  readonly handle: (message: Message) => { toast?: string; pending?: Promise<string | undefined> };
  readonly waiting: () => Outgoing[];
  /** Ticks an answer off. @returns false when another terminal showed it */
  readonly sent: (id: number) => boolean;
  /** The texts of the codes in a picture. */
  readonly codesIn?: (picture: Uint8Array) => Promise<readonly string[]>;
  /** Puts what nobody asked for, such as reminders, in the outbox when its time has come. */
  readonly due: () => Promise<void>;
  /** The clock; `set` is there only where the clock was fixed from outside. */
  readonly clock: { now: () => number; set: ((iso: string) => void) | null };
  /** Where files are written. */
  readonly folder: string;
  readonly input: NodeJS.ReadableStream & { isTTY?: boolean };
  readonly output: NodeJS.WritableStream;
  /** Prints what people said as well, so that the output reads as the whole chat; a line with '#' in front is a comment. */
  readonly echo: boolean;
  /** Told to people who sit at the terminal, once. */
  readonly welcome: string;
  /** Reasons are printed with every answer; otherwise when somebody types "why?". */
  readonly verbose: boolean;
}

const lookEveryMs = 20_000;
/** Every word of a name begins with a capital, where its script has them: 'we are three: …' is nobody's name. */
const speaker = /^(?!\/)((?!\p{Ll})[\p{L}\p{M}](?:[\p{L}\p{M}\p{N}.'’_-]|[ ](?!\p{Ll})){0,30}?): ?(.*)$/su;
/** A recipe's name without anything behind it: its lines may follow as they were copied, the first with a figure in front. */
const opensRecipe = /^\/?recipe\b[^:;\n]*$/iu;
const ingredientFirst = /^ ?(?:[-•*–]\s*)?(?:\d|[½⅓¼¾⅔⅛])/u;
const clockLine = /^\[(\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2})\]$/;

/** A reply as lines of text: what the group reads, then a line for each note, then the numbered buttons. */
export function drawReply(
  { reply, buttons }: Pick<Outgoing, 'reply' | 'buttons'>,
  files: readonly string[],
  verbose: boolean,
): string[] {
  const lines = reply.group.split('\n');
  for (const { who, text } of reply.notes ?? []) lines.push(`  ${who}: ${text}`);
  if (verbose) lines.push(...foldOf(reply));
  for (const { inText } of reply.files ?? []) if (inText) lines.push(...inText.split('\n'));
  for (const path of files) lines.push(`[file: ${path}]`);
  if (buttons.length > 0) lines.push(buttons.map(({ label }, i) => `[${i + 1}] ${label}`).join('  '));
  return lines.map((line) => (line === '' ? '>' : `> ${isolatedRuns(line)}`));
}

/** Reasons and exact figures, set apart from what is read first. */
const foldOf = ({ why = [] }: Outgoing['reply']): string[] =>
  why.flatMap((line) => line.split('\n')).map((line) => `  | ${line}`);

/**
 * The chat in a terminal. `Name: text` speaks as that member; a line that starts with two spaces continues the message
 * before it, as do the copied lines of a recipe; a line without a name is said by whoever spoke last; a number alone
 * presses that button of the last answer; "why?" shows the reasons of the last answer that has any. Ends with the input.
 */
export async function openTerminal(door: TerminalDoor): Promise<void> {
  const interactive = door.input.isTTY === true;
  const print = (line: string) => void door.output.write(`${line}\n`);
  let buttons: Outgoing['buttons'] = [];
  let pending: { name: string; text: string } | undefined;
  /** The message whose lines are copied as they stood, until an empty one. */
  let copied: typeof pending;
  let speaking = 'You';
  let reasons: readonly string[] = [];

  /** Where nothing can be stored, the answer says so; anything else that is thrown is a fault of the program. */
  const attempt = (message: Message): ReturnType<TerminalDoor['handle']> => {
    try {
      return door.handle(message);
    } catch (error) {
      const trouble = storeTrouble(error);
      if (trouble === undefined) throw error;
      return { toast: trouble };
    }
  };
  const send = async () => {
    if (!pending) return;
    const { name, text } = pending;
    pending = undefined;
    if (!door.verbose && reasons.length > 0 && /^\s*why\s*\??\s*$/iu.test(text)) {
      for (const line of reasons) print(`> ${line}`);
      return;
    }
    const press = /^\s*(\d{1,2})\s*$/.exec(text);
    const button = press ? buttons[Number(press[1]) - 1] : undefined;
    const key = randomUUID();
    const picture = button ? undefined : pictureIn(text);
    const scanned = picture && door.codesIn ? await door.codesIn(readFileSync(picture.path)) : [];
    const said = attempt({
      ...(scanned.length > 0 ? { scanned } : {}),
      door: 'terminal',
      chatKey: 'terminal',
      chatTitle: 'the terminal',
      isPrivate: false,
      addressed: true,
      deliveryKey: key,
      messageKey: key,
      topicKey: null,
      person: { key: name.toLowerCase(), name },
      text: button ? '' : scanned.length > 0 ? picture!.words : text,
      sentAtMs: door.clock.now(),
      isEdit: false,
      button: button?.id ?? null,
    });
    for (const line of [said.toast, await said.pending]) if (line) print(`> ${line}`);
    show();
  };
  const show = () => {
    for (const out of door.waiting()) {
      if (!door.sent(out.id)) continue;
      for (const line of drawReply(out, writeFiles(door.folder, out), door.verbose)) print(line);
      reasons = foldOf(out.reply);
      if (out.buttons.length > 0) buttons = out.buttons;
    }
  };
  const showDue = async () => {
    await door.due();
    show();
  };

  await showDue();
  const lines = createInterface({
    input: door.input,
    terminal: interactive,
    output: interactive ? door.output : undefined,
  });
  if (interactive) {
    print(door.welcome);
    lines.setPrompt('');
  }
  // Somebody at a keyboard may leave it open for days.
  const timer = interactive ? setInterval(() => void showDue(), lookEveryMs) : undefined;
  for await (const line of lines) {
    const clock = door.clock.set && clockLine.exec(line);
    const isCopied =
      pending !== undefined &&
      line.trim() !== '' &&
      !/^(?: {2}|\/)/.test(line) &&
      speaker.exec(line)?.[2]?.startsWith('/') !== true &&
      !clock &&
      (opensRecipe.test(pending.text) ? ingredientFirst.test(line) : copied === pending);
    if (isCopied) copied = pending;
    const goesOn = (/^ {2}/.test(line) || isCopied) && pending !== undefined;
    if (!goesOn) await send();
    if (door.echo) print(line);
    if (door.echo && line.startsWith('#')) continue;
    if (clock) {
      door.clock.set!(clock[1]!);
      await showDue();
    } else if (goesOn && pending) {
      pending.text += `\n${line.trim()}`;
    } else if (line.trim() !== '') {
      const named = speaker.exec(line);
      if (named) speaking = named[1]!.trim();
      pending = { name: speaking, text: named ? named[2]! : line };
      // At a keyboard an answer comes at once, save to a request that goes on over several lines.
      if (interactive && !/^\/?recipe\b/i.test(pending.text)) await send();
    }
  }
  await send();
  clearInterval(timer);
  await showDue();
}

/** A path to a picture at the end of what was typed. */
function pictureIn(text: string): { readonly path: string; readonly words: string } | undefined {
  const found = /^(.*?)\s*(\S+\.(?:png|jpe?g))\s*$/isu.exec(text);
  const path = found?.[2];
  return path !== undefined && existsSync(path) ? { path, words: found![1]! } : undefined;
}

function writeFiles(folder: string, { reply }: Outgoing): string[] {
  return (reply.files ?? []).map(({ name, base64 }) => {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const path = join(folder, name.replace(/[^\p{L}\p{N}._-]+/gu, '-'));
    writeFileSync(path, Buffer.from(base64, 'base64'), { mode: 0o600 });
    return path;
  });
}
