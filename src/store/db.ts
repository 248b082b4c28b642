import type Database from 'better-sqlite3';

/** A household's open file. */
export type Db = Database.Database;
