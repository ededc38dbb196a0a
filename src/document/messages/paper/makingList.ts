// The making list: its items, what stands beside them, and what its figures go by. Lengths and shares come written.

import type { BlockName, Side } from '../../../engine';
import { catalogue, plural } from '../catalogue';

type Layer = 'fashion' | 'strength' | 'lining';

const layersOf = (layers: readonly { readonly layer: Layer; readonly count: number }[]): string =>
  layers.map(({ layer, count }) => `${count} ${layer}`).join(', ');

interface BonesRule {
  readonly rule: string;
  readonly total: number;
  readonly boneWidth: string;
  readonly casingWidth: string;
  readonly step: string;
}

interface Bindings {
  readonly slack: string;
  readonly depth: string;
}

interface Lacing {
  readonly inset: string;
  readonly spacing: string;
  readonly waistSpacing: string;
  readonly waistReach: string;
  /** Where the waist lies on the rows. */
  readonly waist: 'between' | 'end' | 'none';
  readonly flange: string;
}

interface Binding {
  readonly shouldered: boolean;
  readonly top: string;
  /** Null where the hem is turned up. */
  readonly hem: string | null;
  readonly spare: string;
}

interface ClothRule {
  readonly selvedge: string;
  readonly spare: string;
  readonly unit: 'in' | 'cm';
}

export const MAKING_LIST = catalogue({
  title: 'Making list',
  titleOf: ({ names }: { names: readonly string[] }) => `Making list: ${names.join(', ')}`,
  /** Said once wherever the list is: where its figures come from. */
  sources:
    'The figures you have not changed are common practice or published advice; Help names the sources.',
  /** Said wherever the list is. */
  care: 'Steel ends, cutters and hot hole-setters: wear eye protection, file and cap every cut end, keep fingers clear of the punch, and let hot tools cool on a stand.',
  pieces: {
    heading: 'Cut',
    layers: ({ layers }: { layers: readonly { readonly layer: Layer; readonly count: number }[] }) =>
      layersOf(layers),
    onFold: 'on the fold',
    pair: 'a pair, one turned over',
    remark: ({ layers }: { layers: readonly { readonly layer: Layer; readonly count: number }[] }) =>
      `Layers: ${layersOf(layers) || 'none'}.`,
  },
  bones: {
    heading: 'Bones',
    onSeam: ({ pieces }: { pieces: readonly string[] }) => `Seam ${pieces.join(' – ')}`,
    centreFront: 'Centre front',
    byEyelets: {
      edge: ({ side, away }: { side: Side | null; away: string }) =>
        `Lacing, ${side === null ? '' : `${side}, `}between edge and eyelets, ${away} from the edge`,
      eyelets: ({ side, away }: { side: Side | null; away: string }) =>
        `Lacing, ${side === null ? '' : `${side}, `}beyond the eyelets, ${away} from the edge`,
    },
    channel: ({ channel }: { channel: string }) => `channel ${channel}`,
    channelStopped: ({ channel, level }: { channel: string; level: string }) =>
      `channel ${channel}, up to the ${level} line only`,
    tooShort: ({ channel }: { channel: string }) => `${channel}, too short for a bone by this rule`,
    busk: 'Busk, centre front',
    buskEdge: ({ edge, step }: { edge: string; step: string }) => `edge ${edge}, in steps of ${step}`,
    buskTooShort: ({ edge }: { edge: string }) => `edge ${edge}, too short for a busk by this rule`,
    remark: ({ rule, total, boneWidth, casingWidth, step }: BonesRule) =>
      `${total} bones ${boneWidth} wide, in channels sewn ${casingWidth} wide. ${rule}, then rounded down to ${step}.`,
    rules: {
      channel: ({ slack }: { slack: string }) => `Bones are ${slack} shorter than their channel`,
      bound: ({ slack, depth }: Bindings) =>
        `Bones are ${slack} shorter than the distance between the bindings, which cover ${depth} at each end`,
      stopped: ({ slack, depth }: Bindings) =>
        `Bones are shorter than their channel by ${depth} at each end, whether bound, turned or stopped, and by ${slack} besides`,
      turned: ({ slack, depth }: Bindings) =>
        `Bones are shorter than their channel by ${depth} for the binding above and as much for the turned hem, and by ${slack} besides`,
    },
  },
  eyelets: {
    heading: 'Lacing',
    rows: ({ count }: { count: number }) =>
      plural(count, { one: 'Eyelets, one row', other: 'Eyelets, two rows alike' }),
    inEachRow: ({ count, piece, apart }: { count: number; piece: string; apart: string }) =>
      `${count} in each row on ${piece}, ${apart}`,
    apart: ({ apart }: { apart: string }) => `${apart} apart`,
    apartFromTo: ({ least, most }: { least: string; most: string }) => `${least} to ${most} apart`,
    centres: 'Eyelet centres',
    fromTop: ({ lengths, unit }: { lengths: readonly string[]; unit: string }) =>
      `from the upper end down: ${lengths.join(', ')} ${unit}`,
    lace: 'Lace',
    opening: ({ opening }: { opening: string }) => `edges ${opening} apart to put it on`,
    remark: ({ inset, spacing, waistSpacing, waistReach, flange, waist }: Lacing) =>
      ({
        between: `Centres ${inset} from the edge, at most ${spacing} apart and ${waistSpacing} within ${waistReach} of the waist, which lies midway between two. Their flanges are ${flange} across.`,
        end: `Centres ${inset} from the edge, at most ${spacing} apart and ${waistSpacing} within ${waistReach} of the waist. Their flanges are ${flange} across.`,
        none: `Centres ${inset} from the edge, at most ${spacing} apart. Their flanges are ${flange} across.`,
      })[waist],
    onBone: ({ least }: { least: string }) =>
      `With these figures the flanges lie on the channel at the edge: set the centres at least ${least} from the edge, or take narrower bones.`,
  },
  fastenings: {
    heading: 'Fastening',
    zip: { front: 'Zip, centre front', back: 'Zip, centre back', side: 'Zip, left side seam' },
    hooks: {
      front: 'Hook tape, centre front',
      back: 'Hook tape, centre back',
      side: 'Hook tape, left side seam',
    } satisfies Record<BlockName | 'side', string>,
    ofSeam: 'the length of the seam',
    ofEdge: 'the length of the edge',
    remark: 'From edge to edge of the finished garment; a zip that is sold longer is shortened.',
  },
  waistSeam: {
    heading: 'Waist seam of a skirt or trousers',
    blocks: { front: 'Finished waist, front', back: 'Finished waist, back' },
    panel: ({ piece, length }: { piece: string; length: string }) => `${piece} ${length}`,
    remark:
      'Along the hem as sewn, from edge to edge, without allowances; a lacing gap is left out. Beside it stands each panel of one half, where the seams of the waist below can meet those of the panels.',
  },
  trimmings: {
    heading: 'Binding, tape, casing',
    binding: 'Binding',
    bindingOf: ({ shouldered, top, hem, spare }: Binding) =>
      `${shouldered ? 'neckline and armholes' : 'top edge'} ${top}, ${hem === null ? 'none for the turned hem' : `hem ${hem}`}, and ${spare} to spare`,
    tape: 'Waist tape',
    tapeOf: ({ ends }: { ends: string }) => `once round the sewn waist, ${ends} for its ends`,
    casing: 'Bone casing',
    casingOf: ({ spare }: { spare: string }) => `all channels, ${spare} to spare on each`,
    remark: 'Where an edge is faced or turned instead of bound, it takes no binding and keeps its allowance.',
    /** Before the binding is sewn on. */
    trim: ({ edges }: { edges: readonly { readonly edge: string; readonly allowance: string }[] }) =>
      `Before binding, trim the allowance away: ${edges.map(({ edge, allowance }) => `${allowance} at the ${edge}`).join(', ')}.`,
  },
  cloth: {
    heading: 'Cloth for one layer',
    wide: ({ width }: { width: string }) => `${width} wide`,
    tooNarrow: 'a panel is wider than this cloth',
    lay: { folded: 'folded lengthwise', open: 'open, in one layer' },
    remark: ({ selvedge, spare, unit }: ClothRule) =>
      `Panels in rows with their grain along the cloth, selvedges of ${selvedge} left, ${spare} to spare, rounded up to ${unit === 'in' ? '⅛ yard' : '5 cm'}. Cloth with a direction or a pattern to match takes more.`,
  },
  yards: ({ yards }: { yards: string }) => `${yards} yd`,
  percent: ({ percent }: { percent: number }) => `${percent} %`,
  /** A CSV file: the heads of its columns, and the names of records that are no items. */
  csv: {
    columns: ({ unit }: { unit: string }) => [
      'Client',
      'Draft',
      'List',
      'Item',
      'Count',
      `Length, ${unit}`,
      'Note',
    ],
    goesBy: 'Goes by',
    sources: 'Sources',
    measurements: 'Measurements',
    estimated: 'Estimated',
    care: 'Care',
    tools: 'Tools',
  },
});
