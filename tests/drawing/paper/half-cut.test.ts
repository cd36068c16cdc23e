import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { placeInWords } from '../../../src/core/problem';
import type { PaperJob } from '../../../src/drawing/paper/chosen';
import { pairLabels, pieceLabels } from '../../../src/drawing/paper/label-pages';
import { PAPERS, type Page } from '../../../src/drawing/paper/page';
import { pieceFiles } from '../../../src/drawing/paper/piece-files';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { ticketPages } from '../../../src/drawing/paper/ticket-pages';
import { ticketTable } from '../../../src/tables/results/ticket';
import { inputOf, type Named } from '../../core/samples';
import { whole } from './jobs';

const HALF: readonly Named[] = [
  { Style: 'Betony', Customer: 'Shop', 37: 1, 38: 1, Cut: 2 },
  { Style: 'Betony', Customer: 'Stall', 38: 1, 39: 2 },
];
const jobOf = (pairage = HALF, more: Partial<PaperJob> = {}): PaperJob => ({
  plan: new Plan(inputOf({ pairage })),
  run: 'Half cut',
  date: '14 Jun 2026',
  paper: PAPERS.A4,
  ...more,
});
const wordsOf = (pages: readonly Page[]) =>
  pages.map((page, i) => JSON.stringify(page.draw(i + 1, pages.length))).join(' ');

describe('paper of a run that is half cut', () => {
  it('has templates of what is left to cut, with its number', () => {
    const pages = whole(templatePages(jobOf()));
    expect(new Set(pages.map(({ name }) => name.replace(/^(.*?, EU \d+).*$/, '$1')))).toEqual(
      new Set(['Betony, EU 38', 'Betony, EU 39']),
    );
    const [of38, of39] = ['EU 38', 'EU 39'].map((size) => wordsOf(pages.filter(({ name }) => name.includes(size))));
    expect(of38).toContain('cut 1 L; turn over for R: 1');
    expect(of39).toContain('cut 2 L; turn over for R: 2');
    expect(whole(pieceFiles(jobOf())).some(({ name }) => name.includes(' 37 '))).toBe(false);
  });

  it('has tickets for all of its pairs that say how many pieces are left to cut', () => {
    const { plan } = jobOf();
    const at = ticketTable().columns.find(({ heading }) => heading === 'Cut')!;
    const cut = (size: number) => [
      ...new Set(plan.ticket('Betony', size).flatMap((line) => at.cell(line, placeInWords) ?? [])),
    ];
    expect([37, 38, 39].map(cut)).toEqual([[0], [2], [4]]);
    const printed = (sizes: readonly number[], tickets: 'size' | 'style') =>
      wordsOf(whole(ticketPages(jobOf(HALF, { sizes, tickets }))));
    expect(printed([38], 'size')).toContain('2 pairs, 1 of them cut already');
    expect(printed([37], 'size')).toContain('One pair, cut already');
    expect(printed([39], 'size')).not.toContain('cut already');
    expect(printed([37, 38, 39], 'style')).toContain('5 pairs, 2 of them cut already');
  });

  it('has labels of pieces for pairs that are left to cut, and of pairs for all', () => {
    const labels = whole(pieceLabels(jobOf()));
    const pairs = new Set(labels.map(({ head, lines }) => `${head.replace(/ [LR]$/, '')} ${lines[1]!.split('; ')[1]}`));
    expect([...pairs]).toEqual(['Betony EU 38 pair 2 of 2', 'Betony EU 39 pair 1 of 2', 'Betony EU 39 pair 2 of 2']);
    expect(whole(pairLabels(jobOf()))).toHaveLength(5);
  });
});
