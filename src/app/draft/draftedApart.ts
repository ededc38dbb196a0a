// Whether left and right are drafted apart: the body differs, or the style does.

import type { Client } from '../../document';
import { differs, type Style } from '../../engine';

export const draftedApart = ({ sides }: Pick<Client, 'sides'>, style: Style): boolean =>
  style.rightWedges !== undefined || (sides !== undefined && differs(sides));
