/**
 * What somebody types without a slash; the request or question it means (several, joined by '|', where each would be
 * right); what becomes of it: 'does' records it, 'offers' records nothing and puts it one tap away, 'answers' only
 * looks, 'nothing' changes and offers nothing; and perhaps words that the answer holds.
 * Witness of every row: the plain meaning of its words, by hand.
 */
export type TalkRow = readonly [typed: string, means: string, does: string, says?: string];
