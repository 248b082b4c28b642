import { z } from 'zod';
import { allergens, diets, kinds } from '#core/allergens.ts';
import type { PacketReading } from '#core/packet.ts';
import type { Db } from './db.ts';

const tags = z.array(z.enum(allergens));
const kindList = z.array(z.enum(kinds));
const ReadingShape: z.ZodType<PacketReading> = z.object({
  contains: tags,
  may: tags,
  free: tags,
  kinds: kindList,
  mayKinds: kindList,
  freeKinds: kindList,
  claims: z.array(z.enum(diets)),
});

/** A food's packet as somebody of the household read it. */
export interface Packet {
  readonly foodKey: string;
  readonly called: string;
  readonly reading: PacketReading;
  readonly readBy: number;
  readonly readAtMs: number;
}

type Row = Omit<Packet, 'reading'> & { readonly readingJson: string };

/** What a household read on packets. */
export function packetStore(db: Db) {
  const columns =
    'food_key AS foodKey, called, reading_json AS readingJson, read_by AS readBy, read_at_ms AS readAtMs';
  const all = db.prepare(`SELECT ${columns} FROM packet WHERE household = ? ORDER BY id`);
  const put = db.prepare(
    `INSERT INTO packet (household, food_key, called, reading_json, read_by, read_at_ms)
     VALUES (:household, :foodKey, :called, :readingJson, :readBy, :readAtMs)
     ON CONFLICT (household, food_key) DO UPDATE SET called = excluded.called,
       reading_json = excluded.reading_json, read_by = excluded.read_by, read_at_ms = excluded.read_at_ms`,
  );
  const drop = db.prepare('DELETE FROM packet WHERE household = ? AND food_key = ?');
  const whole = ({ readingJson, ...row }: Row): Packet => ({
    ...row,
    reading: ReadingShape.parse(JSON.parse(readingJson)),
  });
  return (household: number) => ({
    all: (): Packet[] => (all.all(household) as Row[]).map(whole),
    keep: ({ reading, ...packet }: Packet): void =>
      void put.run({ household, ...packet, readingJson: JSON.stringify(reading) }),
    /** @returns whether there was such a packet */
    forget: (foodKey: string): boolean => drop.run(household, foodKey).changes > 0,
  });
}
