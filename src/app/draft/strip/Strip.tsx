// The strip below the table: the widths of the panels at the level in hand, and what there is to mend.

import type { LevelName } from '../../../engine';
import { MendList } from './MendList';
import { PanelWidths } from './PanelWidths';
import type { TabName } from './tabs';

interface StripProps {
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
  readonly onShow: (tab: TabName, wedge: string | null) => void;
}

export function Strip({ level, onLevel, onShow }: StripProps) {
  return (
    <div className="strip">
      <PanelWidths level={level} onLevel={onLevel} />
      <MendList onShow={onShow} />
    </div>
  );
}
