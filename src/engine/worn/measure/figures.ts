// The fit in figures: by region, by edge and by mark, and one number to compare drafts by.

import type { LedgerRow } from '../../checks/ledger';
import type { Draft } from '../../draft/draft';
import type { Point } from '../../geometry/point';
import type { LevelName } from '../../terms/names';
import type { WornBody } from '../body/wornBody';
import { tapeReaction } from '../cloth/waistTape';
import type { Draped } from '../solve/drape';
import { type Fields, KPA } from './fields';
import { bustPoint, bustSeamAt, markPlaces } from './marks';
import { BANDS, type Band, bandAt, PARTS, type Part, partAt } from './regions';

/** Means over an area are roots of mean squares. */
interface RegionFigures {
  readonly band: Band;
  readonly part: Part;
  /** Distance from the body where the cloth stands off, mm. */
  readonly standOff: number;
  /** Strain where the cloth is longer than cut, both ways together, %. */
  readonly stretch: number;
  /** Mean estimated contact, kPa: only for comparing. */
  readonly contact: number;
  /** Where on paper the cloth stands off most, and where it is stretched most, mm. */
  readonly farthest: Point;
  readonly tightest: Point;
}

interface EdgeFigures {
  readonly edge: 'top' | 'hem';
  readonly part: Part;
  /** Distance from the body, root of the mean square, mm. */
  readonly gape: number;
  /** Where on paper it gapes most, mm. */
  readonly widest: Point;
}

interface MarkFigures {
  readonly level: LevelName;
  readonly part: Part;
  /** Mean height of the marks above the body's level, mm. */
  readonly rise: number;
}

export interface FitFigures {
  readonly regions: readonly RegionFigures[];
  readonly edges: readonly EdgeFigures[];
  readonly marks: readonly MarkFigures[];
  /** The whole garment: stand-off, gape and rise mm, stretch %. */
  readonly standOff: number;
  readonly stretch: number;
  readonly gape: number;
  readonly rise: number;
  /** Distance of the bust seam from the bust point, at the mark of the bust, mm; null for a garment without such a seam there. */
  readonly apex: number | null;
  /** What the waist tape holds in all, as a part of what presses on the body, no unit: friction could hold little. */
  readonly tapeShare: number;
  /** How far the closed girths as cut are from what was asked for, root of the mean square of the levels inside the garment, %. */
  readonly girth: number;
  readonly score: number;
}

/** What is read of a draft: its levels and bust point on paper, mm, and its girths as cut and as asked for. */
type Drafted = Pick<Draft, 'levels' | 'blocks'> & { readonly proof: Pick<Draft['proof'], 'ledger'> };

/** A region smaller than this has no figure of its own, mm². */
const LEAST_AREA = 1500;

/**
 * √(standOff² + (5·stretch)² + (5·girth)² + (gape/2)² + (rise/2)² + (apex/4)²), lower is better. Girth is in it because a garment
 * that reduces pulls and slides by design: a larger one does so less, and is not the garment that was asked for. 1 % of girth weighs
 * as 1 % of stretch, both as 5 mm of stand-off. The weights are ours.
 */
const scoreOf = ({
  standOff,
  stretch,
  girth,
  gape,
  rise,
  apex,
}: Pick<FitFigures, 'standOff' | 'stretch' | 'girth' | 'gape' | 'rise' | 'apex'>): number =>
  Math.hypot(standOff, 5 * stretch, 5 * girth, gape / 2, rise / 2, (apex ?? 0) / 4);

/**
 * The figures of a garment at rest.
 *
 * @param drafted what was asked for is the girth of `body` and what this draft adds to that of its own
 */
export function figuresOf(
  draped: Draped,
  fields: Fields,
  body: WornBody,
  { levels, blocks, proof }: Drafted,
): FitFigures {
  const { regions, whole } = regionSums(draped, fields, body);
  const { mesh, places } = draped;
  const gapes: { edge: 'top' | 'hem'; part: Part; off: number; at: Point }[] = [];
  for (const { kind, sewn, cut } of mesh.lines)
    if (kind === 'top' || kind === 'hem')
      for (const [k, i] of sewn.entries())
        gapes.push({
          edge: kind,
          part: partAt(places[3 * i]!, places[3 * i + 1]!),
          off: Math.max(0, fields.standOff[i]!),
          at: { x: mesh.flat[2 * cut[k]!]!, y: mesh.flat[2 * cut[k]! + 1]! },
        });
  const marks = markPlaces(draped, body, levels);
  const bust = levels.find(({ name }) => name === 'bust');
  const seam = bust && blocks ? bustSeamAt(draped, { x: blocks.front.bustLine, y: bust.y }) : null;
  const [bx, by, bz] = bustPoint(body);
  const total = {
    standOff: Math.sqrt(whole.off / whole.area),
    stretch: Math.sqrt(whole.stretch / whole.area),
    girth: rootMeanSquare(girthsOff(body, proof.ledger)),
    gape: rootMeanSquare(gapes.map(({ off }) => off)),
    rise: rootMeanSquare(marks.map(({ rise }) => rise)),
    apex: seam && Math.hypot(seam[0] - bx, seam[1] - by, seam[2] - bz),
  };
  return {
    regions,
    edges: (['top', 'hem'] as const).flatMap((edge) =>
      PARTS.flatMap((part) => {
        const own = gapes.filter((each) => each.edge === edge && each.part === part);
        if (own.length === 0) return [];
        const { at } = own.reduce((most, each) => (each.off > most.off ? each : most));
        return [{ edge, part, gape: rootMeanSquare(own.map(({ off }) => off)), widest: at }];
      }),
    ),
    marks: levels.flatMap(({ name }) =>
      PARTS.flatMap((part) => {
        const own = marks.filter((mark) => mark.level === name && mark.part === part);
        const sum = own.reduce((all, { rise }) => all + rise, 0);
        return own.length > 0 ? [{ level: name, part, rise: sum / own.length }] : [];
      }),
    ),
    ...total,
    tapeShare: Math.abs(tapeReaction(draped.garment.marks, places)) / (whole.push || 1),
    score: scoreOf(total),
  };
}

/** How much larger (+) or smaller (−) than asked for the closed girth as cut is at each level inside the garment, %. */
const girthsOff = (body: WornBody, ledger: readonly LedgerRow[]): number[] =>
  ledger.flatMap(({ level, bodyGirth, targetGirth, sewnGirth }) => {
    const own = body.levels.find(({ name }) => name === level)?.girth;
    if (own === undefined || sewnGirth === null) return [];
    const asked = own + targetGirth - bodyGirth;
    return [100 * (sewnGirth / asked - 1)];
  });

const rootMeanSquare = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

interface Sums {
  area: number;
  off: number;
  stretch: number;
  contact: number;
  /** N */
  push: number;
  /** The triangle that stands off most, and the one stretched most: how much, and where on paper. */
  farthest: Most;
  tightest: Most;
}

interface Most {
  readonly amount: number;
  readonly at: Point;
}

/**
 * Sums over triangles, in each region and over all. Squares of the stand-off are those of the corners: the square of their mean
 * would leave out how it changes within a triangle, which is more the wider the mesh is.
 */
function regionSums(
  { garment, mesh, places }: Draped,
  { standOff, contact, warp, weft }: Fields,
  body: WornBody,
): { regions: RegionFigures[]; whole: Sums } {
  const none: Most = { amount: Number.NEGATIVE_INFINITY, at: { x: 0, y: 0 } };
  const empty = (): Sums => ({
    area: 0,
    off: 0,
    stretch: 0,
    contact: 0,
    push: 0,
    farthest: none,
    tightest: none,
  });
  const whole = empty();
  const cells = BANDS.flatMap((band) => PARTS.map((part) => ({ band, part, sums: empty() })));
  const { vertices, areas } = garment.membrane;
  for (let t = 0; t < areas.length; t += 1) {
    let [x, y, z, off, square, push] = [0, 0, 0, 0, 0, 0];
    const at = { x: 0, y: 0 };
    for (let k = 0; k < 3; k += 1) {
      const i = vertices[3 * t + k]!;
      const cut = mesh.triangles[3 * t + k]!;
      at.x += mesh.flat[2 * cut]! / 3;
      at.y += mesh.flat[2 * cut + 1]! / 3;
      x += places[3 * i]! / 3;
      y += places[3 * i + 1]! / 3;
      z += places[3 * i + 2]! / 3;
      off += standOff[i]! / 3;
      square += Math.max(0, standOff[i]!) ** 2 / 3;
      push += contact[i]! / 3;
    }
    const [band, part] = [bandAt(z, body.levels), partAt(x, y)];
    const stretched = 1e4 * (Math.max(0, warp[t]!) ** 2 + Math.max(0, weft[t]!) ** 2);
    for (const sums of [whole, cells.find((cell) => cell.band === band && cell.part === part)?.sums]) {
      if (!sums) continue;
      sums.area += areas[t]!;
      sums.off += areas[t]! * square;
      sums.stretch += areas[t]! * stretched;
      sums.contact += areas[t]! * push;
      sums.push += (areas[t]! * push) / KPA;
      if (off > sums.farthest.amount) sums.farthest = { amount: off, at };
      if (stretched > sums.tightest.amount) sums.tightest = { amount: stretched, at };
    }
  }
  const regions = cells
    .filter(({ sums }) => sums.area >= LEAST_AREA)
    .map(({ band, part, sums }) => ({
      band,
      part,
      standOff: Math.sqrt(sums.off / sums.area),
      stretch: Math.sqrt(sums.stretch / sums.area),
      contact: sums.contact / sums.area,
      farthest: sums.farthest.at,
      tightest: sums.tightest.at,
    }));
  return { regions, whole };
}
