/** Words that carry no figure and no name: polite words, articles, question words and contractions. */
const fillers = new Set(
  `a an the this that these those of for to in on at by from and or with do does did is are was be been i im i'm ive
  i've id i'd we we're we've we'd you your our my me us it it's its they how how's much many what what's whats which who
  please pls plz thanks thank thx hi hello hey ok okay just now need needs needed want wants like would could can shall
  should will i'll we'll let lets let's get give tell show make put have has had got there there's here some any so then
  each all per about around roughly into go going must add pour hot boiling bot dear kindly right left still us today ones know having as see`
    .split(/\s+/)
    .map((w) => w),
);

export const isFiller = (word: string): boolean => fillers.has(word);
