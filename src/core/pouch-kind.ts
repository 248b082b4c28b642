import type { Material } from './barrier.ts';

/** A kind of pouch, jar or tin that a household seals in. */
export interface PouchKind {
  /** At its fullest, ml. */
  readonly volumeMl: number;
  /** The size as it was told: '20 x 30 cm flat'. */
  readonly told: string;
  /** null: nobody said. */
  readonly material: Material | null;
  /** Both sides together, cm²; null where only the volume was told. */
  readonly areaCm2: number | null;
}

/** One beside the usual kind, by its name. */
export interface NamedPouchKind extends PouchKind {
  readonly name: string;
}

/** Glass and tin are pressed by nobody: all their room counts. */
export const isRigid = (material: Material | null): boolean => material === 'glass' || material === 'tin';
