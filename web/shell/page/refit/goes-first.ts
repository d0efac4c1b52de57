import type { Id, PartLine, StepLine } from '../../bridge/protocol';

type Line = Pick<PartLine, 'id' | 'assembly'>;

/** Whether `of` may go on after this part. An assembly cannot wait for its own parts: that would turn its whole order over. */
export function mayComeFirst(line: Line, of: Id, assembly: Id, steps: readonly { line: Pick<StepLine['line'], 'id'> }[]): boolean {
  return of !== assembly || (line.assembly !== assembly && !steps.some((step) => step.line.id === line.id));
}
