// Styles nobody would ask for but somebody could type: wedges anywhere, by hand or balanced, at any top and hem.

import {
  type BlockName,
  EDGE_NODES,
  type EdgeNode,
  type EdgeShape,
  LEVEL_EDGE,
  LEVEL_NAMES,
  type PerLevel,
  type Style,
  type Wedge,
} from '../../../src/engine';
import { chance, pick, type Random, uniform } from '../random';

/** `tame` keeps to what a maker might do; `wild` goes to the ends of what the engine accepts. */
export type Temper = 'tame' | 'wild';

/** A random style within the spans the engine accepts. Ids are `front-0`, `front-1` … and may come in any order. */
export function randomStyle(random: Random, temper: Temper = 'tame'): Style {
  const wild = temper === 'wild';
  const length = (tame: [number, number], all: [number, number]): number =>
    uniform(random, ...(wild ? all : tame));
  const allowance = (): number => (chance(random, 0.25) ? 0 : length([3, 30], [0, 100]));
  const levels = (value: (level: keyof PerLevel) => number): PerLevel =>
    Object.fromEntries(LEVEL_NAMES.map((level) => [level, value(level)])) as unknown as PerLevel;
  const wedges = [...wedgesOf(random, 'front', wild), ...wedgesOf(random, 'back', wild)];
  return {
    ease: levels((level) => length(level === 'waist' ? [-90, 40] : [-20, 60], [-200, 200])),
    frontShare: Object.fromEntries(
      LEVEL_NAMES.flatMap((level) =>
        chance(random, 0.5) ? [] : [[level, length([0.46, 0.56], [0.3, 0.7])]],
      ),
    ),
    ...(chance(random, 0.4) ? {} : { overBustAbove: length([30, 70], [15, 150]) }),
    topFrom: pick(random, ['overBust', 'overBust', 'underBust']),
    topShape: randomEdge(random, wild),
    hemShape: randomEdge(random, wild),
    topAbove: chance(random, 0.3) ? 0 : length([-120, 50], [-300, 200]),
    hemBelow: chance(random, 0.2) ? 0 : length([-30, 230], [-200, 500]),
    closure: {
      front: pick(random, ['fold', 'seam', 'busk', 'lacing', 'zip']),
      back: pick(random, ['lacing', 'lacing', 'hooks', 'zip']),
      lacingGap: chance(random, 0.3) ? 0 : length([0, 90], [0, 300]),
    },
    wedges: chance(random, 0.5) ? wedges.reverse() : wedges,
    balance: { sideShare: length([0, 0.6], [0, 1]), cap: length([20, 80], [0, 300]) },
    allowances: {
      seam: allowance(),
      side: allowance(),
      top: allowance(),
      hem: allowance(),
      centre: allowance(),
    },
  };
}

/** Often level; otherwise nodes up and down, some of them corners. */
function randomEdge(random: Random, wild: boolean): EdgeShape {
  if (chance(random, 0.3)) return LEVEL_EDGE;
  const node = (): EdgeNode => ({
    beyond: wild ? uniform(random, -150, 150) : uniform(random, -15, 25),
    kind: chance(random, 0.25) ? 'corner' : 'smooth',
  });
  return Object.fromEntries(EDGE_NODES.map((name) => [name, node()])) as unknown as EdgeShape;
}

function wedgesOf(random: Random, block: BlockName, wild: boolean): Wedge[] {
  const count = Math.floor(random() * (wild ? 7 : 5));
  const hasCentre = block === 'front' && count > 0 && chance(random, 0.4);
  return Array.from({ length: count }, (_, i): Wedge => {
    const centre = hasCentre && i === 0;
    // Spread out, so that most sets can be cut; the wild ones fall anywhere.
    const spread = -0.75 + ((i + 0.2 + 0.6 * random()) * 1.6) / count;
    const station = centre ? -1 : wild && chance(random, 0.3) ? uniform(random, -0.999, 1) : spread;
    const sizing = chance(random, 0.5) ? 'manual' : 'balanced';
    const most = wild ? pick(random, [10, 60, 300]) : 34 - 4 * count;
    return {
      id: `${block}-${i}`,
      kind: 'through',
      block,
      station,
      ...(block === 'front' && chance(random, 0.25)
        ? { cup: { below: uniform(random, 20, 45), intake: uniform(random, 0, 5) } }
        : {}),
      stationAt: chance(random, 0.4)
        ? someLevels(random, () => clamp(station + uniform(random, -0.06, 0.06) * (wild ? 8 : 1)))
        : {},
      sizing,
      intake: sizing === 'manual' ? someLevels(random, () => uniform(random, 0, most)) : {},
      weight: wild ? pick(random, [0.01, 1, 100]) : uniform(random, 0.5, 4),
    };
  });
}

const clamp = (station: number): number => Math.min(1, Math.max(-1, station));

function someLevels(random: Random, value: () => number): Partial<PerLevel> {
  return Object.fromEntries(LEVEL_NAMES.filter(() => chance(random, 0.6)).map((level) => [level, value()]));
}
