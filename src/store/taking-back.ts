import { Refusal } from '#core/refusal.ts';
import type { Db } from './db.ts';
import { recordTables } from './record-tables.ts';

/** Where a change was made and by whom. */
export interface Author {
  readonly household: number;
  readonly door: string;
  readonly chatKey: string;
  readonly member: number;
  readonly atMs: number;
}

interface Change {
  table_name: string;
  row_id: number;
  before_json: string | null;
  after_json: string | null;
}

/**
 * Taking changes back, and putting back what was taken back. Rows are restored as the journal noted them.
 * @param columns the columns of each record table
 * @param stopNoting what is restored is no change of its own
 */
export function takingBack(db: Db, columns: ReadonlyMap<string, readonly string[]>, stopNoting: () => void) {
  const lastStanding = db
    .prepare(
      `SELECT id FROM entry WHERE door = ? AND chat_key = ? AND household = ? AND undone_at_ms IS NULL AND did <> '' ORDER BY id DESC LIMIT ?`,
    )
    .pluck();
  const standing = db.prepare(
    'SELECT id, did FROM entry WHERE id = ? AND household = ? AND undone_at_ms IS NULL',
  );
  const lastUndone = db.prepare(
    `SELECT id, did FROM entry WHERE door = ? AND chat_key = ? AND household = ? AND undone_at_ms IS NOT NULL AND did <> ''
       ORDER BY undone_at_ms DESC, id LIMIT 1`,
  );
  const markStanding = db.prepare('UPDATE entry SET undone_at_ms = NULL, undone_by = NULL WHERE id = ?');
  const changesOf = db.prepare('SELECT * FROM row_change WHERE entry = ? ORDER BY id DESC');
  const laterOnRow = db.prepare(
    `SELECT entry.did, member.name FROM row_change JOIN entry ON entry.id = row_change.entry
       JOIN member ON member.id = entry.member
     WHERE table_name = ? AND row_id = ? AND entry.id > ? AND undone_at_ms IS NULL AND did <> '' ORDER BY entry.id DESC LIMIT 1`,
  );
  const laterInHousehold = db.prepare(
    `SELECT entry.did, member.name FROM entry JOIN member ON member.id = entry.member
     WHERE entry.household = ? AND entry.id > ? AND undone_at_ms IS NULL AND did <> '' ORDER BY entry.id DESC LIMIT 1`,
  );
  const markUndone = db.prepare('UPDATE entry SET undone_at_ms = ?, undone_by = ? WHERE id = ?');
  const laterEntriesOn = db
    .prepare(
      `SELECT DISTINCT entry FROM row_change JOIN entry ON entry.id = row_change.entry
       WHERE table_name = ? AND row_id = ? AND entry.id > ? AND undone_at_ms IS NULL AND did <> ''`,
    )
    .pluck();
  /** Columns of record tables that point to a row of another: what hangs on a row. */
  const hangingOn = (table: string) =>
    recordTables.flatMap((child) =>
      (db.pragma(`foreign_key_list(${child})`) as { table: string; from: string; to: string }[])
        .filter((key) => key.table === table && key.to === 'id')
        .map(({ from }) =>
          db
            .prepare(
              `SELECT DISTINCT entry FROM row_change JOIN entry ON entry.id = row_change.entry
               WHERE entry.household = :household AND table_name = '${child}' AND before_json IS NULL
                 AND after_json ->> '${from}' = :row AND entry.id > :entry AND undone_at_ms IS NULL AND did <> ''`,
            )
            .pluck(),
        ),
    );

  const restore = ({ table_name: table, row_id, before_json, after_json }: Change) => {
    const known = columns.get(table);
    if (!known) throw new Error(`the journal names an unknown table: ${table}`);
    // A row noted before a column was added does not tell it: it keeps what it has, or the column's default.
    const told = new Set(Object.keys(JSON.parse(before_json ?? '{}') as object));
    const names = known.filter((name) => told.has(name));
    if (before_json === null) {
      db.prepare(`DELETE FROM ${table} WHERE id = ?`).run(row_id);
    } else if (after_json === null) {
      db.prepare(
        `INSERT INTO ${table} (${names.join(', ')}) SELECT ${names.map((n) => `:row ->> '${n}'`).join(', ')}`,
      ).run({ row: before_json });
    } else {
      db.prepare(
        `UPDATE ${table} SET ${names.map((n) => `${n} = :row ->> '${n}'`).join(', ')} WHERE id = :id`,
      ).run({ row: before_json, id: row_id });
    }
  };

  return {
    /** The last standing changes of a chat, the newest first. */
    lastOf: ({ door, chatKey, household }: Author, count: number): number[] =>
      lastStanding.all(door, chatKey, household, count) as number[],

    /** Later changes that stand on one, or on those that do: they have to go first. Newest first. */
    standingOn(household: number, entry: number): number[] {
      const found = new Set<number>();
      const open = [entry];
      for (let id = open.pop(); id !== undefined; id = open.pop()) {
        for (const { table_name: table, row_id: row, before_json: before } of changesOf.all(id) as Change[]) {
          const later = [
            ...(laterEntriesOn.all(table, row, id) as number[]),
            ...(before === null
              ? hangingOn(table).flatMap((query) => query.all({ household, row, entry: id }) as number[])
              : []),
          ];
          for (const one of later)
            if (!found.has(one)) {
              found.add(one);
              open.push(one);
            }
        }
      }
      return [...found].toSorted((one, other) => other - one);
    },

    /**
     * Takes back one standing change.
     * @throws Refusal 'nothing-to-undo' or 'stands-on' when a later change, perhaps made in another chat, needs it
     */
    undo(author: Author, entry: number): string {
      const last = standing.get(entry, author.household) as { id: number; did: string } | undefined;
      if (!last) throw new Refusal('nothing-to-undo', 'That is taken back already.');
      const changes = changesOf.all(last.id) as Change[];
      const standsOn = (later: unknown) => {
        const by = later as { did: string; name: string } | undefined;
        return new Refusal(
          'stands-on',
          `"${last.did}" cannot be taken back yet: a later change stands on it (${by ? `${by.name}: ${by.did}` : 'made in another chat'}). Take that one back first.`,
        );
      };
      for (const change of changes) {
        const later = laterOnRow.get(change.table_name, change.row_id, last.id);
        if (later) throw standsOn(later);
      }
      stopNoting();
      try {
        for (const change of changes) restore(change);
      } catch (error) {
        if (error instanceof Error && /FOREIGN KEY/.test(error.message)) {
          throw standsOn(laterInHousehold.get(author.household, last.id));
        }
        throw error;
      }
      markUndone.run(author.atMs, author.member, last.id);
      return last.did;
    },

    /** What was taken back last in a chat. */
    lastUndone: ({ door, chatKey, household }: Author): number | undefined =>
      (lastUndone.get(door, chatKey, household) as { id: number } | undefined)?.id,
    /**
     * Puts back what was taken back last in a chat.
     * @throws Refusal 'nothing-to-redo', or 'changed-since' when its rows are not as they were left
     */
    redo(author: Author): string {
      const last = lastUndone.get(author.door, author.chatKey, author.household) as
        { id: number; did: string } | undefined;
      if (!last)
        throw new Refusal(
          'nothing-to-redo',
          'Nothing was taken back in this chat, so nothing can be put back.',
        );
      const changes = (changesOf.all(last.id) as Change[]).toReversed();
      const firstOfRow = changes.filter(
        (one, i) =>
          changes.findIndex((other) => other.table_name === one.table_name && other.row_id === one.row_id) ===
          i,
      );
      const isAsLeft = firstOfRow.every(({ table_name: table, row_id, before_json }) => {
        const row = db.prepare(`SELECT * FROM ${table} WHERE id = ?`).get(row_id) as
          Record<string, unknown> | undefined;
        if (before_json === null || row === undefined) return before_json === null && row === undefined;
        const before = JSON.parse(before_json) as Record<string, unknown>;
        return Object.entries(before).every(([name, value]) => row[name] === value);
      });
      if (!isAsLeft)
        throw new Refusal(
          'changed-since',
          `"${last.did}" cannot be put back as it was: its records have changed since. Please send it anew.`,
        );
      stopNoting();
      for (const change of changes)
        restore({ ...change, before_json: change.after_json, after_json: change.before_json });
      markStanding.run(last.id);
      return last.did;
    },
  };
}
