// Top edge and hem: a shape to start from, and every place of it as a number.

import {
  changeStyle,
  EDGE_NODE_WORDS,
  edgeShapeName,
  edgeShapeNamed,
  HEM_EDGES,
  LEVEL_WORDS,
  type NamedEdge,
  setEdgeNode,
  TOP_EDGES,
} from '../../document';
import { EDGE_NODES, type EdgeNodeName, styleSpan, TOP_LEVELS, type TopLevel } from '../../engine';
import { Checkbox } from '../components/Checkbox';
import { LengthField } from '../components/LengthField';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const EDGES = [
  { edge: 'topShape', title: 'Top edge', named: TOP_EDGES, says: 'above' },
  { edge: 'hemShape', title: 'Hem', named: HEM_EDGES, says: 'below' },
] as const;

type EdgeName = (typeof EDGES)[number]['edge'];

const EDGE_CODES = { topShape: 'top', hemShape: 'hem' } as const;

/** On a shouldered block the top edge is neckline and armhole, and shoulder and nape set the rest of them. */
const SHOULDERED_NODES: readonly EdgeNodeName[] = ['centreFront', 'underarm'];

/** The places at the head of a field of their own. */
const NODE_HEADS: Readonly<Record<EdgeNodeName, string>> = {
  centreFront: 'centre front',
  bustLine: 'bust line',
  sideFront: 'side-front',
  underarm: 'underarm',
  sideBack: 'side-back',
  centreBack: 'centre back',
};

export function EdgeCard() {
  const { savedDraft } = useOpen();
  const { pieces } = useDraft();
  const shouldered = pieces.some(({ edges }) => edges.some(({ role }) => role === 'shoulder'));
  const change = useStore((state) => state.change);
  return (
    <section className="card edge-card" aria-label="Top edge and hem">
      {EDGES.map(({ edge, title, named, says }) => (
        <div key={edge} className="edge-shape">
          <div className="edge-head">
            <h3>{title}</h3>
            {edge === 'topShape' && shouldered ? null : (
              <ShapeChoice edge={edge} title={title} named={named} />
            )}
            {edge === 'topShape' ? (
              <label className="choice">
                <span>
                  <span className="unseen">Top edge </span>measured from the
                </span>
                <select
                  value={savedDraft.style.topFrom}
                  onChange={(event) => {
                    const topFrom = TOP_LEVELS.find((level) => level === event.target.value) ?? 'overBust';
                    change({ code: 'topLineSet' }, (book) =>
                      changeStyle(book, (style) => ({ ...style, topFrom })),
                    );
                  }}
                >
                  {TOP_LEVELS.map((level: TopLevel) => (
                    <option key={level} value={level}>
                      {LEVEL_WORDS[level]} line
                    </option>
                  ))}
                </select>
              </label>
            ) : null}
          </div>
          <p className="hint">
            {edge === 'topShape' && shouldered
              ? 'How far neckline and armhole end above the level top edge; the shoulders set the rest.'
              : `How far each place lies ${says} the level ${title.toLowerCase()}.`}
          </p>
          <div className="edge-nodes">
            {(edge === 'topShape' && shouldered ? SHOULDERED_NODES : EDGE_NODES).map((node) => (
              <NodeField key={node} edge={edge} title={title} node={node} />
            ))}
          </div>
        </div>
      ))}
    </section>
  );
}

function ShapeChoice({ edge, title, named }: { edge: EdgeName; title: string; named: readonly NamedEdge[] }) {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const name = edgeShapeName(savedDraft.style[edge], named);
  return (
    <label className="choice">
      <span className="unseen">Shape of the {title.toLowerCase()}</span>
      <select
        value={name}
        onChange={(event) => {
          const shape = edgeShapeNamed(event.target.value, named);
          change({ code: 'edgeShapeSet', edge: EDGE_CODES[edge] }, (book) =>
            changeStyle(book, (style) => ({ ...style, [edge]: shape })),
          );
        }}
      >
        {named.map(({ name: each, label }) => (
          <option key={each} value={each}>
            {label}
          </option>
        ))}
        {name === 'free' ? <option value="free">Free</option> : null}
      </select>
    </label>
  );
}

function NodeField({ edge, title, node }: { edge: EdgeName; title: string; node: EdgeNodeName }) {
  const { client, savedDraft } = useOpen();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  const change = useStore((state) => state.change);
  const { beyond, kind } = savedDraft.style[edge][node];
  const place = EDGE_NODE_WORDS[node];
  return (
    <div className="edge-node">
      <span className="edge-node-name">{NODE_HEADS[node]}</span>
      <LengthField
        compact={true}
        signed={true}
        span={styleSpan(`${edge}.${node}.beyond`)}
        label={`${title} at ${place}`}
        value={beyond}
        unit={client.unit}
        onShow={(mm) =>
          show((book) =>
            changeStyle(book, (style) => setEdgeNode(style, edge, node, { kind, beyond: mm ?? 0 })),
          )
        }
        onKeep={() => keep({ code: 'edgeNodeSet', edge: EDGE_CODES[edge], node })}
        onDrop={drop}
      />
      <Checkbox
        small={true}
        on={kind === 'corner'}
        onSet={(corner) =>
          change({ code: 'edgeNodeSet', edge: EDGE_CODES[edge], node }, (book) =>
            changeStyle(book, (style) =>
              setEdgeNode(style, edge, node, { beyond, kind: corner ? 'corner' : 'smooth' }),
            ),
          )
        }
      >
        corner
        <span className="unseen">
          {' '}
          in the {title.toLowerCase()} at {place}
        </span>
      </Checkbox>
    </div>
  );
}
