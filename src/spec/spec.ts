import type { Units } from '../units/units.js';
import type { Paper } from '../units/paper.js';
import type { Shop } from './shop.js';

/** A round part: its measured diameter, mm. */
export interface Round {
  readonly name: string;
  readonly diameter: number;
  readonly length?: number;
  readonly from?: 'square' | 'bought';
  /** Written as a diameter in a field's place: `name` is made from it. */
  readonly unnamed?: true;
}

/** Where something stands in the spec file, counted from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** One jig as asked for: `fields` is what the kind's schema made of it (mm, radians, rounds looked up). */
export interface JigEntry {
  readonly kind: string;
  readonly name: string;
  readonly fields: unknown;
  readonly position: Position;
  /** Where the texts written in its fields stand, by their path in the entry (`carrier.from`), with the line that holds each. */
  readonly textPlaces: Readonly<Record<string, Position & { readonly source: string }>>;
}

/** How the sheets are to be laid out; what is absent is chosen. mm. */
export interface SheetWishes {
  readonly margins: { readonly top: number; readonly right: number; readonly bottom: number; readonly left: number };
  readonly overlap: number;
  readonly turn: 'auto' | 'portrait' | 'landscape';
  /** By jig name: where seams must run, mm along the drawing from its datum. */
  readonly seams: Readonly<Record<string, { readonly along: readonly number[]; readonly across: readonly number[] }>>;
}

/** A checked spec: plain data, mm and radians, nothing left to look up. */
export interface Spec {
  /** File name without folder and ending, made safe: names the output folder. */
  readonly name: string;
  readonly title: string;
  readonly revision: string;
  readonly units: Units;
  readonly paper: Paper;
  readonly rounds: Readonly<Record<string, Round>>;
  readonly shop: Shop;
  readonly sheets: SheetWishes;
  readonly jigs: readonly JigEntry[];
  /** First 8 hex digits of the SHA-256 of the spec text (and shop file), line ends normalised: on every sheet and in the report. */
  readonly digest: string;
}
