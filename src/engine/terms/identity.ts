// Which piece a piece is, and which seam a seam: fields to ask and to name things by. Keys are made of them, never read back.

import type { BlockName, Side } from './names';

type PieceKind = 'panel' | 'sidePanel' | 'band' | 'modesty' | 'facing' | 'strap' | 'sleeve';

interface PieceFields {
  /** `sidePanel`: front and back side panel in one. All but the panels are cut beside them. */
  readonly kind: PieceKind;
  /** The block it lies on: the front for a side panel in one, for straps and sleeves. */
  readonly block: BlockName;
  /** Counted from the centre line, from 1; 0 for a piece beside the panels. */
  readonly number: number;
  /** The half it is cut for, where the halves differ; null for either. */
  readonly side: Side | null;
}

export interface PieceIdentity extends PieceFields {
  /** The key of the piece in maps and files. */
  readonly id: string;
}

/** The identity of these fields, for a half where `side` is given. */
export function identifyPiece(
  kind: PieceKind,
  block: BlockName,
  number = 0,
  side: Side | null = null,
): PieceIdentity {
  return { id: pieceId({ kind, block, number, side }), kind, block, number, side };
}

/** "front-1", "side", "back-band", "strap"; before it the half. */
function pieceId({ kind, block, number, side }: PieceFields): string {
  const half = side === null ? '' : `${side}-`;
  switch (kind) {
    case 'panel':
      return `${half}${block}-${number}`;
    case 'sidePanel':
      return `${half}side`;
    case 'strap':
    case 'sleeve':
      return `${half}${kind}`;
    default:
      return `${half}${block}-${kind}`;
  }
}

/** The identity alone of something that has one. */
export const identityOf = ({ id, kind, block, number, side }: PieceIdentity): PieceIdentity => ({
  id,
  kind,
  block,
  number,
  side,
});

/** The piece of one half that is this piece where the halves are alike. */
export const pieceOfSide = (side: Side, { kind, block, number }: PieceIdentity): PieceIdentity =>
  identifyPiece(kind, block, number, side);

/** A part of a shoulder seam that wedges part, or the whole of one; `middle` lies between two wedges. */
export type ShoulderPart = 'neck' | 'middle' | 'tip' | 'whole';

/** A part of a side seam in which a dart opens. */
export type SidePart = 'aboveDart' | 'belowDart';

/** `side` is the half it lies on, where the halves differ; null for either, and for a centre that joins both. */
type SeamFields = { readonly side: Side | null } & (
  | {
      readonly kind: 'wedge';
      /** Both panels in sewing order; one where its mate could not be made. */
      readonly pieces: readonly PieceIdentity[];
    }
  | { readonly kind: 'dart'; readonly piece: PieceIdentity; readonly wedge: string }
  /** `part` where a dart that opens in the side seam parts it. */
  | { readonly kind: 'sideSeam'; readonly part?: SidePart }
  | { readonly kind: 'centre'; readonly block: BlockName }
  | { readonly kind: 'shoulder'; readonly part: ShoulderPart }
  /** A panel's top edge and what is sewn to it: a shoulder band or a sleeve. */
  | { readonly kind: 'joined'; readonly panel: PieceIdentity; readonly to: PieceIdentity }
);

/** A seam, a centre edge that meets its mirror image, or a dart; `id` is its key in maps and files. */
export type SeamIdentity = SeamFields & { readonly id: string };

export type DartIdentity = Extract<SeamIdentity, { readonly kind: 'dart' }>;

/** The seam of two panels that a wedge parts, in sewing order; of one panel where its mate could not be made. */
export const identifyWedgeSeam = (...pieces: readonly PieceIdentity[]): SeamIdentity =>
  withId({ kind: 'wedge', side: pieces[0]?.side ?? null, pieces: pieces.map(identityOf) });

/** The dart of a wedge in a piece. */
export const identifyDart = (piece: PieceIdentity, wedge: string): DartIdentity =>
  withId({ kind: 'dart', side: piece.side, piece: identityOf(piece), wedge });

/** The side seam or a part of it, of one half where `side` is given. */
export const identifySideSeam = (side: Side | null = null, part?: SidePart): SeamIdentity =>
  withId({ kind: 'sideSeam', side, ...(part ? { part } : {}) });

/** The centre edge of a block; with `side` that of one half, without it also the seam that joins both. */
export const identifyCentre = (block: BlockName, side: Side | null = null): SeamIdentity =>
  withId({ kind: 'centre', side, block });

/** The shoulder seam or a part of it, of one half where `side` is given. */
export const identifyShoulder = (part: ShoulderPart, side: Side | null = null): SeamIdentity =>
  withId({ kind: 'shoulder', side, part });

/** The seam of a panel's top edge and what is sewn to it. */
export const identifyJoined = (panel: PieceIdentity, to: PieceIdentity): SeamIdentity =>
  withId({ kind: 'joined', side: panel.side, panel: identityOf(panel), to: identityOf(to) });

const withId = <Fields extends SeamFields>(fields: Fields): Fields & { readonly id: string } => ({
  ...fields,
  id: seamId(fields),
});

/** "front-1/front-2", "front-2/dart:" and the wedge's id, "side", "side-above-dart", "back-centre", "shoulder-tip"; before it the half. */
function seamId(seam: SeamFields): string {
  const half = seam.side === null ? '' : `${seam.side}-`;
  switch (seam.kind) {
    case 'wedge':
      return seam.pieces.map(({ id }) => id).join('/');
    case 'dart':
      return `${seam.piece.id}/dart:${seam.wedge}`;
    case 'sideSeam':
      return `${half}${seam.part ? SIDE_PARTS[seam.part] : 'side'}`;
    case 'centre':
      return `${half}${seam.block}-centre`;
    case 'shoulder':
      return seam.part === 'whole' ? `${half}shoulder` : `${half}shoulder-${seam.part}`;
    case 'joined':
      return `${seam.panel.id}/${seam.to.id}`;
  }
}

const SIDE_PARTS: Readonly<Record<SidePart, string>> = {
  aboveDart: 'side-above-dart',
  belowDart: 'side-below-dart',
};

/** The seam of one half that is this seam where the halves are alike. */
export function seamOfSide(side: Side, seam: SeamIdentity): SeamIdentity {
  switch (seam.kind) {
    case 'wedge':
      return identifyWedgeSeam(...seam.pieces.map((piece) => pieceOfSide(side, piece)));
    case 'dart':
      return dartOfSide(side, seam);
    case 'sideSeam':
      return identifySideSeam(side, seam.part);
    case 'centre':
      return identifyCentre(seam.block, side);
    case 'shoulder':
      return identifyShoulder(seam.part, side);
    case 'joined':
      return identifyJoined(pieceOfSide(side, seam.panel), pieceOfSide(side, seam.to));
  }
}

/** The dart of one half that is this dart where the halves are alike. */
export const dartOfSide = (side: Side, { piece, wedge }: DartIdentity): DartIdentity =>
  identifyDart(pieceOfSide(side, piece), wedge);
