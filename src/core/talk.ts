/** A message as every door hands it over: plain data, no door's own types. */
export interface Message {
  readonly door: 'terminal' | 'telegram';
  readonly chatKey: string;
  readonly chatTitle: string;
  /** A chat with one person only. */
  readonly isPrivate: boolean;
  /** Meant for the bot without a slash: private chat, mention, or an answer to one of its messages. */
  readonly addressed: boolean;
  /** Unique for each delivery by the door; the same delivery twice has the same key. */
  readonly deliveryKey: string;
  readonly messageKey: string;
  readonly topicKey: string | null;
  readonly person: { readonly key: string; readonly name: string };
  /** Another name by which people may mean the speaker, such as a public one. */
  readonly alias?: string;
  /** Whose message it answers, where that is another person. */
  readonly answersTo?: { readonly key: string; readonly name: string };
  readonly text: string;
  /** What stands in the codes of a picture that came with it. */
  readonly scanned?: readonly string[];
  readonly sentAtMs: number;
  /** It waited for so long, such as through an outage, that its answer says so. */
  readonly isLate?: boolean;
  /** The person changed an earlier message; `text` is the new wording. */
  readonly isEdit: boolean;
  /** The button pressed, in place of typed text. */
  readonly button: number | null;
  /** The message that carries that button, where the door tells. */
  readonly carrierKey?: string | null;
}

export interface Note {
  /** Whom it concerns, as they are called in the group. */
  readonly who: string;
  readonly text: string;
  /** It keeps something from them: said each time, however lately it was said. */
  readonly bars?: true;
}

export interface Choice {
  readonly label: string;
  /** The request that pressing it makes, as if typed by the presser. */
  readonly request: string;
  /** Pressing it does not use it up, and everybody may. */
  readonly stays?: true;
}

/** A list that follows the records in one message. */
export interface Live {
  /** The request whose list it is: it alone can say how the list stands. */
  readonly kind: string;
  /** The trip or the batch that it is of. */
  readonly of: number;
  readonly page: number;
  /** What was done, for whoever did it while the list is at hand. */
  readonly receipt: string;
  /** Whether it is to be at the top of the chat; undefined to leave that as it is. */
  readonly pin?: boolean;
}

export interface FileOut {
  readonly name: string;
  readonly type: 'application/pdf' | 'image/png' | 'application/json' | 'text/csv' | 'text/calendar';
  readonly base64: string;
  readonly caption: string;
  /** A chart in letters, for a door that shows no pictures. */
  readonly inText?: string;
}

/** One page of an answer that is turned by buttons, such as a day of a plan. */
export interface Page {
  readonly label: string;
  readonly group: string;
  readonly why?: readonly string[];
}

/** An answer as every door draws it. Text is plain: nothing in it is markup. */
export interface Reply {
  /** What the group reads: what was asked or done in the first line, then what somebody must know or do, a fact a line. */
  readonly group: string;
  /** Reasons, sources, limits and exact figures, a fact a line: folded away until somebody asks why. */
  readonly why?: readonly string[];
  /** What holds each time such a thing is done, in the same words: behind the group's text, once in a while. */
  readonly heed?: readonly string[];
  /** Short notes for single people, shown after the group's text. */
  readonly notes?: readonly Note[];
  readonly buttons?: readonly Choice[];
  /** Anyone of the household may press; otherwise only the person who asked. */
  readonly buttonsForAll?: boolean;
  /** Pressing one does not use it up: everybody may press it for themselves. */
  readonly buttonsStay?: boolean;
  /** More of the answer, a page a button; all in one message where the door can change it. */
  readonly pages?: readonly Page[];
  /** Which of them it shows; the first, where nobody turned it. */
  readonly page?: number;
  readonly files?: readonly FileOut[];
  /** Nobody asked, but somebody has something to do now: it may make a sound. */
  readonly sounds?: boolean;
  /** For the journal, when something was recorded: 'sealed B4-1 to B4-6'. */
  readonly did?: string;
  /** A list: where the chat has it already, that message changes and this one stays unsent. */
  readonly live?: Live;
  /** Only a question: what a press of its button brings takes its place. */
  readonly asks?: true;
  /** It asks for what a request lacks: what that person says next may be it. */
  readonly awaits?: { readonly request: string; readonly person: string };
  /** It answers what was asked long ago: such answers go out together and say so. */
  readonly late?: true;
  /** Nothing but that it was done: a sign at the message that asked says as much. */
  readonly isReceipt?: true;
  /** What a press brought speaks of the message with the button alone, and takes its place. */
  readonly inPlace?: true;
}

/** A reply that waits in the outbox, with where it goes and the buttons as they were stored. */
export interface Outgoing {
  readonly id: number;
  readonly door: Message['door'];
  readonly chatKey: string;
  readonly topicKey: string | null;
  readonly replyToKey: string | null;
  /** The message whose place it takes, as its door knows it; null for a message of its own. */
  readonly editKey: string | null;
  readonly reply: Reply;
  readonly buttons: readonly { readonly id: number; readonly label: string }[];
  readonly partsSent: number;
  readonly tries: number;
  /** Other answers that go out in the same message. */
  readonly along?: readonly number[];
}
