/** The drawings of the worksheet as SVG. */

import { drawPattern, specFrom, suitableWidth } from '../../../layout/drawing/index.ts';
import { paintSvg } from '../../../render/svg/index.ts';
import { formatQuantity } from '../../../units/index.ts';
import type { Worksheet } from './compute.ts';
import type { Inputs } from './fields.ts';

export interface Figure {
  readonly svg: string;
  /** Widths as on the pages of joints. */
  readonly size: 'narrow' | 'middling' | 'wide';
}

/** The numbered bolt pattern; undefined when it cannot be drawn. */
export function patternFigure(inputs: Inputs, { layout, read }: Worksheet): Figure | undefined {
  if (layout === undefined) return undefined;
  const { pattern, holes, sequence } = layout;
  const name = inputs.name.trim();
  const rounds = (read.tightening?.rounds ?? [])
    .map(
      (r) =>
        `Round ${r.number}: ${formatQuantity(r.torque)} ${r.pass === 'circular' ? 'from neighbour to neighbour' : 'in order'}.`,
    )
    .join(' ');
  const spec = specFrom({
    pattern,
    holes,
    sequence,
    action: 'tighten',
    name: name === '' ? 'the joint' : name,
    view: 'from the side of the wrench',
    rounds,
  });
  const widthMm = suitableWidth(spec);
  return {
    svg: paintSvg(drawPattern(spec, { widthMm }), { idPrefix: 'ws-pattern', className: 'drawing' }),
    size: widthMm <= 58 ? 'narrow' : widthMm <= 78 ? 'middling' : 'wide',
  };
}
