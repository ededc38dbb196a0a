// Which pieces lie on the bias.

import { LAY, type LayCloth, type LayLayer, pieceLabel } from '../../../document';
import { Checkbox } from '../../components/fields/Checkbox';
import { type ClothDraft, isOnBias, piecesOf, withBias } from './piecesOnCloth';

interface BiasFieldProps {
  readonly cloth: LayCloth;
  readonly layer: LayLayer;
  readonly drafts: readonly ClothDraft[];
  readonly onSet: (change: Pick<LayCloth, 'bias'>) => void;
}

export function BiasField({ cloth, layer, drafts, onSet }: BiasFieldProps) {
  const listed = drafts.flatMap((draft, of) =>
    piecesOf(draft, layer).map((piece) => ({ draft: draft.name, asked: { of, piece: piece.id }, piece })),
  );
  const count = listed.filter(({ asked }) => isOnBias(cloth.bias, asked)).length;
  return (
    <details className="lay-bias">
      <summary>{LAY.bias.summary({ pieces: count })}</summary>
      <p className="hint">{LAY.bias.hint}</p>
      <div className="lay-ticks">
        {listed.map(({ draft, asked, piece }) => (
          <Checkbox
            key={`${asked.of} ${asked.piece}`}
            small
            on={isOnBias(cloth.bias, asked)}
            onSet={(on) => onSet({ bias: withBias(cloth.bias, asked, on) })}
          >
            {drafts.length > 1 ? LAY.others.pieceOf({ draft, piece: pieceLabel(piece) }) : pieceLabel(piece)}
          </Checkbox>
        ))}
      </div>
    </details>
  );
}
