const set = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Polite openings, calls and interjections: what is said begins behind them. */
export const openers = set(`
  hi hello hey hiya yo ok okay so well and but then now also please pls plz sorry hmm hm um uh oh ah oops ups yes yep yeah
  no nope right alright great good morning evening afternoon dear bot guys everyone folks again btw fyi hooray yay wow haha`);

/** Question words, as people write them. */
export const questionWords = set(
  `what whats what's whats' which who whos who's whose whom when when's whens where where's wheres why why's how how's hows wat wot wich witch wen wer wy hwo hwat whn whch`,
);

/** Auxiliaries that open a question when whom it speaks of follows. */
export const auxiliaries = set(`
  do does did is are was were has have had can could may might should shall will would am must need
  isn't isnt aren't arent wasn't wasnt weren't werent don't dont doesn't doesnt didn't didnt haven't havent hasn't hasnt
  hadn't hadnt won't wont wouldn't wouldnt can't cant cannot couldn't couldnt shouldn't shouldnt`);

/** What the bot can be told to do behind 'can you'; whatever else 'you' can do is asked. */
export const orderVerbs = set(`
  record log note write mark put add enter save tick jot tell show list give print send make set change undo take remove delete
  plan pick choose remind count correct fix rename scale cancel move book register update switch turn stop start forget keep
  weigh seal load discard throw bin label draw export calculate work check find look explain say help revert reverse swap`);

/** Of those, the ones that open nothing but a question. */
export const alwaysAsking = set(
  `does did is are am should shall doesn't doesnt didn't didnt isn't isnt aren't arent shouldn't shouldnt hasn't hasnt haven't havent weren't werent`,
);

export const pronouns = set(`
  i we you he she it they there that this these those one anybody anyone everybody everyone somebody someone nobody
  anything everything something nothing all any`);

/** Words in front of a thing that is spoken of. */
export const articles = set(
  `the a an our my your his her their this that these those some any each every all both`,
);

/** A wish to be told, in other words than a question's. */
export const wantsToKnow =
  /^(?:i(?:['’]?m| am)? (?:just )?(?:wonder(?:ing)?|curious)|(?:i |we )?(?:want|need|(?:would |['’]?d )?(?:like|love)) to (?:know|see)|do you know|does any(?:one|body) know|any(?:one|body) know|any(?:one|body)\b|any idea|no idea|not sure|unsure|tell (?:me|us)|let (?:me|us) know|show|list|give (?:me|us) (?:the |a |an |all |your )?(?:list|card|water|figures?|numbers?|details?|recipe|chart|log|history|status)|remind (?:me|us) (?:what|when|how|who|which|where|why)|any\b|anything|enough\b|(?:can|could|would|will) (?:you|u) (?:please |pls )?(?:tell|show|list|say|explain|find|check|look|calculate|work out|give)\b)/i;

/** Words that leave it open whether a thing is so. */
export const doubts = set(
  `maybe perhaps probably possibly might unsure apparently supposedly hopefully if whether unless guess suppose`,
);
export const doubtPhrases =
  /\b(?:i|we) (?:think|believe|guess|suppose)\b|\bnot (?:quite |really |so )?sure\b|\b(?:may|could|must|should|might) have\b|\blooks? like\b|\bseems?\b|\bno idea\b|\bwhat if\b/i;

/** Words that put a deed ahead of now. */
export const futures = set(
  `will gonna tomorrow later soon planning shall i'll we'll ill well'll they'll he'll she'll it'll won't wont must should`,
);
export const futurePhrases =
  /\b(?:going|want|wants|would like|['’]d like|plan|plans|planning|about|need|needs|have|has|ought|hope|hoping) to\b|\blet['’]?s\b|\blet us\b|\bnext (?:week|month|year|weekend|time)\b|\bthis (?:evening|weekend)\b|\btonight\b/i;

/** Words that turn a sentence round. */
const negations = set(
  `not never nobody none neither nor cannot cant dont doesnt didnt havent hasnt hadnt wont wouldnt couldnt shouldnt isnt arent wasnt werent aint`,
);
export const isNegation = (word: string): boolean => negations.has(word) || /n['’]t$/.test(word);

/** Adverbs that say how little or how surely a thing is so: they leave it open, or make it a part. */
const weighty = set(
  `partly nearly mostly hardly barely scarcely possibly probably supposedly apparently allegedly only family early daily weekly supply reply apply jelly belly july italy fly`,
);
/** 'Quickly', 'happily', 'roughly': how a thing was done changes nothing of what is recorded. */
export const isAdverb = (word: string): boolean =>
  (word.length > 4 && word.endsWith('ly') && !weighty.has(word)) ||
  /^(?:about|around|just|so|and|then)$/.test(word);

/** Part of a thing, not the whole. */
export const parts =
  /\b(?:almost(?! all)|nearly(?! all)|partly|mostly|hardly|barely|(?<!and a )half(?! an? (?:hour|day|litre|liter|kilo|cup|pound)| past| (?:grams?|g|litres?|kilos?|cups?|ml|kg)\b)|a third|two thirds|a quarter|part of|parts of|some of|a bit of|most of|almost all|nearly all|not all|quarter of)\b/i;

/** What is left out of a whole. */
export const exceptions =
  /\b(?:except(?: for)?|but not|all but|everything but|apart from|other than|besides|excluding|minus(?! \d)|without|save for)\b/i;

/**
 * Words that say nothing of what is to be recorded: where, with whom, in what weather, how it felt to do it. A
 * closed list; a word that might matter is asked about.
 */
export const harmless = set(`
  just already finally again today now yesterday morning evening night noon midday lunch dinner breakfast supper tea
  brunch snack moment lunchtime dinnertime last this week weekend earlier ago before after during at on in by near up out off
  down over into away along around outside inside here there home camp campsite hut trail hike summit lake river rain snow sun
  wind storm weather cold hot warm dark mountain hill forest beach car boat tent kitchen cellar basement garage house with
  together kids family guests visitors neighbours neighbors colleagues friends grandma grandpa mum mom dad everyone everybody guys us all well fine nice nicely happy
  new oops sorry please thanks thank cheers yay hooray lol haha wow too also as planned usual the a an and of for to from
  it its it's that these those my our your his her their i we you he she they im i'm ive i've we've weve id i'd me was
  were is are be been being have has had do did does so very really quite rather still only both each then than because
  since while when which who what one ones more yes ok okay we're you're they're he's she's that's there's meanwhile once current latest says say said tell told note noted log logged jot jotted write wrote enter entered recorded record mark marked down bags bag pouches pouch packet packets pouche bit little manual instructions booklet website`);
