import { drawDrying } from './chart-drying.ts';
import { drawSeason } from './chart-season.ts';
import { drawStock } from './chart-stock.ts';
import { drawTrip } from './chart-trip.ts';
import type { ChartFacts } from './facts.ts';
import type { Picture } from './picture.ts';

/**
 * A chart as one picture, or as several where one could not be read.
 * @throws Refusal 'no-glyph'
 */
export function drawChart(facts: ChartFacts): Promise<Picture[]> {
  switch (facts.is) {
    case 'drying':
      return drawDrying(facts);
    case 'stock':
      return drawStock(facts);
    case 'season':
      return drawSeason(facts);
    case 'trip':
      return drawTrip(facts);
  }
}
