// Which half the Draft step shows, handed down to its parts.

import { createContext, useContext } from 'react';
import type { Side } from '../../engine';

/** Null outside the Draft step: there both halves are seen at once. */
export const SideContext = createContext<Side | null>(null);

/** The half that is shown and worked on; the left one where both are seen at once. */
export const useSide = (): Side => useContext(SideContext) ?? 'left';
