import type { LabelFacts } from '#draw/facts.ts';

/** A label of an invented pouch. */
export function labelOf(code: string, meal: string, more: Partial<LabelFacts> = {}): LabelFacts {
  return {
    code,
    meal,
    water: '355 ml (1½ cups)',
    soak: 'Stand 15 min at 340 m',
    dry: '95 g',
    servings: '1.2 servings',
    sealed: 'Sat 3 Apr 2027',
    bestBy: 'Sept 2028',
    cautions: [],
    contents: ['Contains: milk, wheat.'],
    camp: null,
    notFor: [],
    scan: `https://t.me/kettle_and_tray_bot?start=h1_${code}`,
    ...more,
  };
}

/** Of our own invention, longer than anybody types. */
export const longName =
  'Great-grandmother’s slow Sunday barley and smoked mushroom pot with pickled walnuts, juniper and browned butter';
