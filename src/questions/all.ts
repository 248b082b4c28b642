import type { Command } from '#chat/command.ts';
import { advice } from './advice.ts';
import * as batches from './batches.ts';
import { atCamp } from './camp.ts';
import * as meals from './meals.ts';
import { nutrition } from './nutrition.ts';
import * as other from './other.ts';
import * as people from './people.ts';
import * as pouches from './pouches.ts';
import { season } from './season.ts';
import * as stock from './stock.ts';
import * as trips from './trips.ts';
import { without } from './without.ts';

/** Every question about the records that a sentence may ask. */
export const questions: readonly Command[] = [
  stock.howMany, stock.keeps, pouches.whatOf, pouches.howHeavy, pouches.isDry, pouches.absorber, batches.unsealed, nutrition,
  without, meals.whatsIn, atCamp, meals.serves, meals.ranking, meals.ratingsOf, meals.mayFood,
  people.mayEat, people.stranger, people.whatFor, people.holds, people.anyHolds, people.eaterOfName, people.whoAvoids,
  trips.dinner, trips.packed, trips.packWeight, trips.fuelNeed, trips.tripWater, trips.tripOf,
  other.soak, other.coldWater, other.settingOf, other.worry, advice, other.undoable, other.cost, other.firstWords, season,
]; // prettier-ignore
