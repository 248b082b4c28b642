import { dryingFacts, stockFacts, tripFacts } from '#cards/chart-facts.ts';
import { seasonFacts } from '#cards/season-facts.ts';
import { planned } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { tripMeant } from '#house/trips.ts';
import { Refusal } from '#core/refusal.ts';
import type { ChartFacts } from '#draw/facts.ts';
import { type Bar, textPlot, thinned } from '#draw/text-plot.ts';
import { batchNamed, flag, optional, part } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayMonth } from '#words/say.ts';

/** A text plot longer than a screen is no picture any more. */
const mostBars = 24;

interface Asked {
  readonly batch: number | undefined;
  readonly stock: true | undefined;
  readonly season: true | undefined;
  readonly place: string | undefined;
  readonly trip: true | undefined;
}

export default planned({
  name: 'chart',
  alsoCalled: ['charts', 'curve', 'plot'],
  usage: '/chart <batch> · /chart stock · /chart season · /chart <trip>',
  summary: "a picture: how a batch dries, what is in stock, a season, a trip's sodium and energy",
  examples: ['/chart B4', '/chart stock', '/chart season', '/chart Heron Lake'],
  offers: { of: 'batches' },
  takes: {
    stock: flag('stock', 'cupboard', 'shelf'),
    season: flag('season', 'year', 'glance', 'months'),
    place: optional(
      part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
    ),
    trip: flag('trip', 'sodium', 'energy', 'salt'),
    batch: optional(batchNamed('any')),
  },
  look: (asked, house) => factsMeant(asked, house),
  work: async (facts, { drawing }) => ({ facts, drawn: await drawing.chart(facts) }),
  keep: ({ facts, drawn }, asked, house) => {
    if (JSON.stringify(factsMeant(asked, house)) !== JSON.stringify(facts))
      throw new Refusal('changed', 'The records behind the chart changed while I was drawing. Ask again.');
    return { facts, drawn };
  },
  say: ({ facts, drawn }) => ({
    group: [facts.title, ...facts.caption].join('\n'),
    files: drawn.files.map((png, i) => ({
      name: `chart-${nameOf(facts)}${drawn.files.length > 1 ? `-${i + 1}` : ''}.png`,
      type: 'image/png' as const,
      base64: Buffer.from(png).toString('base64'),
      caption: facts.title.slice(0, 200),
      ...(i === 0 ? { inText: textPlot(barsOf(facts)) } : {}),
    })),
  }),
});

function factsMeant({ batch, stock, season, place, trip }: Asked, house: House): ChartFacts {
  const meant = [batch !== undefined, stock === true, season === true, place !== undefined || trip === true];
  if (meant.filter(Boolean).length > 1)
    throw new Refusal('one-chart', 'One chart at a time: a batch, the stock, a season or a trip.');
  if (batch !== undefined) return dryingFacts(house, batch);
  if (stock) return stockFacts(house);
  if (season) return seasonFacts(house);
  if (place !== undefined || trip) return tripFacts(house, tripMeant(house, place));
  throw new Refusal(
    'what',
    'I still need what to draw: a batch code such as B4, "stock", "season", or a trip.',
  );
}

function nameOf(facts: ChartFacts): string {
  return facts.is === 'stock' || facts.is === 'season'
    ? facts.is
    : facts.title.split(facts.is === 'trip' ? ':' : ' ', 1)[0]!;
}

/** The same figures as bars in letters. */
function barsOf(facts: ChartFacts): Bar[] {
  if (facts.is === 'drying')
    return facts.series.flatMap(({ called, points, expectedG }): Bar[] => [
      ...thinned(points, Math.max(3, Math.floor(mostBars / facts.series.length))).map(({ hours, g }) => ({
        label: `${called}, ${hours.toFixed(1)} h`,
        value: g,
        says: `${Math.round(g)} g`,
      })),
      ...(expectedG === null
        ? []
        : [{ label: `${called}, expected`, value: expectedG, says: `about ${Math.round(expectedG)} g` }]),
    ]);
  if (facts.is === 'stock')
    return facts.cells.map(({ meal, month, pouches }) => ({
      label: `${month === null ? 'no best-by' : sayMonth(`${month}-01`)} ${meal}`,
      value: pouches,
      says: String(pouches),
    }));
  if (facts.is === 'season')
    return facts.rows.map(({ meal, sealed, eaten, left, wasted }) => ({
      label: meal,
      value: eaten,
      says: `${eaten} eaten, ${left} left, ${wasted} thrown away, ${sealed} sealed`,
    }));
  return facts.rows.map(({ who, day, sodiumMg, sodiumLimitMg, kcal }) => ({
    label: `${who}, ${day}`,
    value: sodiumMg,
    says: `${Math.round(sodiumMg)}${sodiumLimitMg === null ? '' : ` of ${sodiumLimitMg}`} mg sodium, ${Math.round(kcal)} kcal`,
  }));
}
