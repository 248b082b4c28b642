import type { HelpRecord } from '#house/house.ts';

/** Every request in a line, for a phone. */
export function helpAll(requests: readonly HelpRecord[]): string {
  return [
    'I keep the numbers from the pot to the last spoon. Requests:',
    ...requests.map(({ name, summary }) => `/${name}: ${summary}`),
    'More of one, with examples: /help seal. Plain sentences work in answer to me: how much water for B4-2?',
  ].join('\n');
}

/** One request with all that can be said of it. */
export function helpOn({ usage, summary, help, examples }: HelpRecord): string {
  return [
    usage,
    `${summary[0]!.toUpperCase()}${summary.slice(1)}.`,
    ...help,
    'For example:',
    ...examples,
  ].join('\n');
}

/** The platform's menu: what it shows when somebody types a slash. */
export function menu(requests: readonly HelpRecord[]): { command: string; description: string }[] {
  // A name that is tapped is sent at once: what takes something back by its name alone is typed.
  return requests
    .filter(({ name }) => name !== 'undo')
    .map(({ name, summary }) => ({ command: name, description: summary.slice(0, 256) }));
}

/** The README's table of requests. */
export function helpTable(requests: readonly HelpRecord[]): string {
  const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return [
    '| request | typed like | what it does |',
    '| --- | --- | --- |',
    ...requests.map(
      ({ name, examples, summary }) =>
        `| \`/${name}\` | ${examples.map((e) => `\`${e.replaceAll('|', '\\|')}\``).join('<br>')} | ${cell(summary)} |`,
    ),
  ].join('\n');
}
