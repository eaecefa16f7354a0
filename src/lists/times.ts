/** How long a job takes: labour, waiting and elapsed time, by stage and in all. Seconds throughout. */

import type { Step, Variant } from '../resolve/types.ts';

export interface Wait {
  /** Number of the step, and its anchor on the page. */
  readonly step: number;
  readonly anchor: string;
  readonly seconds: number;
  readonly why: string;
}

export interface StageTime {
  readonly number: number;
  readonly title: string;
  /** Working time of the stage, or the sum of what its steps state. */
  readonly workSeconds: number;
  /** Working time times people; nobody is counted while the work waits. */
  readonly labourSeconds: number;
  readonly waits: readonly Wait[];
  readonly waitSeconds: number;
  /** Working and waiting, one after the other. */
  readonly elapsedSeconds: number;
  /** Steps whose time nobody has stated, neither for themselves nor for their stage. */
  readonly unstated: readonly number[];
}

export interface Times {
  readonly people: number;
  readonly stages: readonly StageTime[];
  readonly workSeconds: number;
  readonly labourSeconds: number;
  readonly waitSeconds: number;
  readonly elapsedSeconds: number;
  readonly waits: readonly Wait[];
  /** Stages with steps without a time: the sums fall short by their work. */
  readonly short: readonly StageTime[];
}

type TimedStage = Pick<Variant['stages'][number], 'number' | 'title' | 'time'> & {
  readonly steps: readonly Pick<Step, 'number' | 'anchor' | 'time' | 'wait'>[];
};

/**
 * Times of one card. people: who work on it throughout. A time stated for a stage stands for all its steps; otherwise the
 * times of the steps are added up, and steps without one are named.
 */
export function timesOf(stages: readonly TimedStage[], people: number): Times {
  const all = stages.map((stage) => stageTime(stage, people));
  const sum = (of: (s: StageTime) => number): number => all.reduce((total, s) => total + of(s), 0);
  return {
    people,
    stages: all,
    workSeconds: sum((s) => s.workSeconds),
    labourSeconds: sum((s) => s.labourSeconds),
    waitSeconds: sum((s) => s.waitSeconds),
    elapsedSeconds: sum((s) => s.elapsedSeconds),
    waits: all.flatMap((s) => s.waits),
    short: all.filter((s) => s.unstated.length > 0),
  };
}

function stageTime({ number, title, time, steps }: TimedStage, people: number): StageTime {
  const stated = steps.reduce((total, s) => total + (s.time?.si ?? 0), 0);
  const workSeconds = time?.si ?? stated;
  const waits = steps.flatMap(({ number: step, anchor, wait }) =>
    wait === undefined ? [] : [{ step, anchor, seconds: wait.time.si, why: wait.why }],
  );
  const waitSeconds = waits.reduce((total, w) => total + w.seconds, 0);
  return {
    number,
    title,
    workSeconds,
    labourSeconds: people * workSeconds,
    waits,
    waitSeconds,
    elapsedSeconds: workSeconds + waitSeconds,
    unstated: time === undefined ? steps.filter((s) => s.time === undefined).map((s) => s.number) : [],
  };
}
