import { Refusal } from '#core/refusal.ts';
import type { FoodTable } from '#foods/food.ts';
import { pouchesShownDry } from '#house/dryness.ts';
import type { House } from '#house/house.ts';
import { tableWith } from '#house/own-foods.ts';
import type { Status } from '#house/status.ts';
import type { Stores } from '#store/house.ts';
import type { Command, Workers } from './command.ts';

/** What it takes to answer: the records, the food table, the requests and what works beside the chat. */
export interface Answerer {
  readonly stores: Stores;
  readonly foods: FoodTable;
  readonly commands: readonly Command[];
  /** What a sentence may ask about the records; they have no slash of their own. */
  readonly questions: readonly Command[];
  readonly workers: Workers;
  readonly admitCode: string | null;
  readonly chatLink: string | null;
  /** How the program does; only whoever runs it is told. */
  readonly status?: () => Status;
  /** Where a bug is reported; it never sees the message's text. */
  readonly log: (line: string) => void;
}

/** Whoever writes as the group stays unnamed: nobody eats under that name. */
function nobodyHere(eaters: House['eaters'], name: string): House['eaters'] {
  return {
    ...eaters,
    add: (key, eater) => {
      if (eater.name === name || eater.name === '')
        throw new Refusal(
          'unnamed',
          'You write as the group, so I do not know who you are. Name the person, or write as yourself.',
        );
      return eaters.add(key, eater);
    },
  };
}

/** One household as a message or a reminder sees it; who looks, and what they may do, is told apart. */
export function seenBy(
  { stores, foods, commands, chatLink }: Answerer,
  household: number,
  looker: Pick<House, 'member' | 'journal' | 'status' | 'sure' | 'tapped' | 'nowMs'>,
): House {
  const records = stores.of(household);
  const house = {
    ...records,
    household,
    members: () => stores.households.members(household),
    settings: records.settings.all(),
    told: records.settings,
    foods: tableWith(foods, records),
    requests: commands,
    chatLink,
    ...looker,
  };
  return {
    ...house,
    pouches: pouchesShownDry(house, stores.changes),
    eaters: looker.member.isUnnamed ? nobodyHere(records.eaters, looker.member.name) : records.eaters,
  };
}

/** The household as nobody in particular sees it: for what is posted without having been asked. */
export function standing(answerer: Answerer, household: number, nowMs: number): House {
  return seenBy(answerer, household, {
    member: { id: 0, name: '' },
    nowMs,
    sure: false,
    tapped: false,
    journal: {
      lastHere: () => [],
      standingOn: () => [],
      undo: () => {
        throw new Error('nobody takes nothing back');
      },
      redo: () => {
        throw new Error('nobody puts nothing back');
      },
      latest: (count) => answerer.stores.journal.latest(household, count),
    },
    status: null,
  });
}
