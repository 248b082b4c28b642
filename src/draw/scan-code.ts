import { encode } from 'uqr';

/** A two-dimensional code after ISO/IEC 18004, medium correction: its modules, dark or not, without a margin. */
export function scanCode(text: string): readonly (readonly boolean[])[] {
  return encode(text, { ecc: 'M', boostEcc: true, border: 0 }).data;
}

/** Light modules around a code that the standard asks for. */
export const quietModules = 4;
