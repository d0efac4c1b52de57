import { count } from './format';

/** Plain numbered tags to print. */
export const tagsSheet = {
  title: 'Print tags',
  second: (from: string, to: string) => `${from} to ${to}`,
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'Letter' },
  paperSecond: { a4: '21 of 63.5 × 38.1 mm', letter: '30 of 2⅝ × 1 in' },
  pages: 'Sheets',
  fewer: 'One sheet fewer',
  another: 'One sheet more',
  sheets: (n: number) => count(n, 'sheet'),
  skip: 'Labels already used on the first sheet',
  from: 'First number',
  fromWrong: 'A number from 1',
  why: 'They begin with the next tag of this device. Print at actual size, without margins or scaling.',
  print: 'Print',
  preview: 'The sheet as it prints',
};
