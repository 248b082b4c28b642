/** Nobody expects an answer to these. */
export const courtesy =
  /^(?:(?:please|hey|hi|so|oh|ok so|sorry|(?:ha)+h?|lol)[\s,!]+)*(?:(?:ha)+h?|good one|(?:many )?thanks?(?: you)?(?: (?:a lot|so much|again))?|thx|ty|cheers|ok(?:ay)?|k|great|good|nice|perfect|lovely|cool|super|wow|haha|lol|yay|yes|no|nope|yep|got it|well done|good (?:job|bot|night)|you(?:['’]re| are) (?:the best|great)|bye|see (?:you|ya)(?: (?:later|soon|then|there|tomorrow|tonight|(?:at|on) [\p{L}\d:]+))?|(?=\p{Extended_Pictographic}))(?: please| thanks)?[\s!.,\p{Extended_Pictographic}\p{Emoji_Modifier}\u{fe0f}]*$/iu;
