import { inRange } from '#core/ranges.ts';
import { takeWhole } from './names.ts';
import { optional, part } from './part.ts';

/** 'cold', 'cold soak', 'in cold water', 'cold 15 C': how warm the water is, °C; a stream's where nobody says. */
export const coldC = optional(
  part<number>('cold water, such as cold 10 C', (reading) => {
    if (reading.keyword('cold', 'unboiled') === undefined) return undefined;
    reading.takeWords('soak', 'soaked', 'soaking', 'water');
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      if (token.is !== 'quantity' || !/^[°º]?\s*[cf]/i.test(token.unitTyped)) continue;
      reading.take(index);
      const isF = /f/i.test(token.unitTyped);
      return inRange('out-of-range', 'coldWaterC', isF ? (token.value - 32) / 1.8 : token.value);
    }
    return streamC;
  }),
);

/** Of a stream or a bottle, °C; as trips reckon. Chosen. */
export const streamC = 10;

/** 'for Ana and Noa', 'in mugs', 'for everybody': who shares what is poured. Empty: all who are here. */
export const sharers = optional(
  part<string[]>('who shares it, such as for Ana and Noa', (reading, names) => {
    const isMugs = reading.keyword('mugs', 'mug', 'bowls', 'bowl') !== undefined;
    const isAll = reading.keyword('everybody', 'everyone') !== undefined;
    const found: string[] = [];
    for (
      let name = takeWhole(reading, names.eaters);
      name !== undefined;
      name = takeWhole(reading, names.eaters)
    )
      found.push(name);
    if (found.length > 0 || isMugs || isAll) {
      const me = reading.keyword('me', 'myself') === undefined ? [] : [names.me];
      return [...new Set([...found, ...me])];
    }
    return undefined;
  }),
);
