/** The checks of the family TOL, in order. */

import type { Check } from '../check.ts';
import { calibrationOverdue } from './calibration-overdue.ts';
import { gaugeCoarse } from './gauge-coarse.ts';
import { gaugeRange } from './gauge-range.ts';
import { gaugeTooCoarse } from './gauge-too-coarse.ts';
import { noCalibrationDate } from './no-calibration-date.ts';
import { noGraduation } from './no-graduation.ts';
import { notAMeasuringTool } from './not-a-measuring-tool.ts';
import { toolAtOtherBench } from './tool-at-other-bench.ts';
import { unlistedTool } from './unlisted-tool.ts';

export const TOL: readonly Check[] = [
  unlistedTool,
  toolAtOtherBench,
  gaugeTooCoarse,
  gaugeCoarse,
  gaugeRange,
  calibrationOverdue,
  noCalibrationDate,
  notAMeasuringTool,
  noGraduation,
];
