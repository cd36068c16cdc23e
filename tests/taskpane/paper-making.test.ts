import { describe, expect, it, vi } from 'vitest';
import { templatePages } from '../../src/drawing/paper/template-pages';
import { ticketPages } from '../../src/drawing/paper/ticket-pages';
import { PaperMaking } from '../../src/taskpane/paper-making';
import { demoJob, whole } from '../drawing/paper/jobs';

describe('the pages of a choice', () => {
  const { plan } = demoJob();
  const making = () => new PaperMaking(vi.fn(), vi.fn());
  const job = (paper: PaperMaking) => paper.job(plan, '');

  it('are counted before any is made, and anew for another choice', async () => {
    const paper = making();
    paper.choose(() => (paper.styles = new Set(['Teasel'])));
    expect(paper.count(job(paper))).toBeUndefined();
    // A choice that is no more is not counted to its end.
    paper.choose(() => (paper.sizes = new Set([39, 40])));
    expect(paper.count(job(paper))).toBeUndefined();
    const templates = whole(templatePages(job(paper))).length;
    await vi.waitFor(() => expect(paper.count(job(paper))).toBe(templates), { timeout: 20_000 });
    paper.choose(() => paper.documents.add('tickets'));
    expect(paper.count(job(paper))).toBeUndefined();
    const both = templates + whole(ticketPages(job(paper))).length;
    await vi.waitFor(() => expect(paper.count(job(paper))).toBe(both), { timeout: 20_000 });
    expect(paper.state.kind).toBe('none');
    paper.show(job(paper));
    await vi.waitFor(() => expect(paper.state.kind).toBe('made'));
    expect(paper.state.kind === 'made' && paper.state.pages.length).toBe(both);
  });

  it('are not counted where something keeps them from being made', () => {
    const paper = making();
    paper.choose(() => paper.documents.clear());
    expect(paper.count(job(paper))).toBeUndefined();
    expect(paper.fault).toBe('Choose a document.');
  });
});
