/** Where a part stands; worked out from the record, never set by hand. */
export type Standing = 'on' | 'off' | 'judged' | 'decided' | 'out' | 'order' | 'tried' | 'ready' | 'refitted';

/** What may lie over any standing. */
export interface TagMarks {
  inHand?: boolean;
  irreplaceable?: boolean;
  missing?: boolean;
  foreign?: boolean;
  struck?: boolean;
}

export const STANDINGS: readonly Standing[] = ['on', 'off', 'judged', 'decided', 'out', 'order', 'tried', 'ready', 'refitted'];
