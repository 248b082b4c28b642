import type { Answerer } from '#chat/answerer.ts';
import { readCommands } from '#chat/registry.ts';
import { defaultSettings } from '#core/settings.ts';
import { questions } from '#questions/all.ts';
import { openDrawing } from '#draw/drawing.ts';
import { rereadLines } from '#house/reread.ts';
import { openSolver } from '#solver/solver.ts';
import type { Db } from '#store/db.ts';
import type { Foods } from '#store/foods.ts';
import { openStores } from '#store/house.ts';

interface Given extends Partial<Omit<Answerer, 'stores' | 'foods' | 'log'>>, Pick<Answerer, 'log'> {
  readonly db: Db;
  readonly foods: Foods;
  /** IANA name; what a household's clock shows until it tells its own. */
  readonly zone: string;
}

export interface Assembled {
  readonly house: Answerer;
  /** Ends the threads and closes the files. */
  readonly close: () => Promise<void>;
}

/** Puts together all it takes to answer: for the program, its demo, its benchmarks and its tests alike. */
export async function assemble({ db, foods, zone, ...given }: Given): Promise<Assembled> {
  const solver = openSolver();
  const drawing = openDrawing();
  const house: Answerer = {
    stores: openStores(db, { ...defaultSettings, zone }),
    foods,
    commands: given.commands ?? (await readCommands()),
    questions,
    workers: { picks: solver, drawing },
    admitCode: null,
    chatLink: null,
    ...given,
  };
  house.stores.together(() => rereadLines(house.stores, foods));
  return {
    house,
    async close() {
      await solver.dispose();
      await drawing.dispose();
      foods.close();
      db.close();
    },
  };
}
