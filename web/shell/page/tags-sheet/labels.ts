/** A sheet of labels, in millimetres: two sizes that are sold everywhere. */
export interface Sheet {
  name: 'a4' | 'letter';
  width: number;
  height: number;
  across: number;
  down: number;
  label: { width: number; height: number };
  /** Where the first label begins. */
  left: number;
  top: number;
  /** From one label to the next. */
  pitch: { x: number; y: number };
}

const INCH = 25.4;

export const SHEETS: Record<Sheet['name'], Sheet> = {
  a4: { name: 'a4', width: 210, height: 297, across: 3, down: 7, label: { width: 63.5, height: 38.1 },
    left: 7.21, top: 15.15, pitch: { x: 66.04, y: 38.1 } },
  letter: { name: 'letter', width: 8.5 * INCH, height: 11 * INCH, across: 3, down: 10, label: { width: 2.625 * INCH, height: INCH },
    left: 0.1875 * INCH, top: 0.5 * INCH, pitch: { x: 2.75 * INCH, y: INCH } },
};

export interface Label { number: number; x: number; y: number }

/** The labels of each sheet; so many on the first are used already. */
export function layOut(sheet: Sheet, from: number, sheets: number, skip: number): Label[][] {
  const perSheet = sheet.across * sheet.down;
  let number = from;
  return Array.from({ length: sheets }, (_, page) => {
    const first = page === 0 ? Math.min(skip, perSheet - 1) : 0;
    return Array.from({ length: perSheet - first }, (__, i) => {
      const at = first + i;
      return { number: number++, x: sheet.left + (at % sheet.across) * sheet.pitch.x, y: sheet.top + Math.floor(at / sheet.across) * sheet.pitch.y };
    });
  });
}
