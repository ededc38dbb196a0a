import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { IssueList } from '../../../src/app/components/IssueList';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../src/engine';
import { onTable } from '../withStore';

const { measurements } = DEMO_CLIENT;

describe('what a draft has to say', () => {
  it('is nothing aloud for a draft that is sound', () => {
    const { issues } = draft(measurements, DEFAULT_STYLE);
    onTable(<IssueList issues={issues} />);
    expect(screen.queryByText('Cannot be cut')).toBeNull();
    expect(screen.queryByText('Not yet measured')).toBeNull();
  });

  it('names all that was not measured in one line, with the way there', () => {
    const { issues } = draft({ ...measurements, bust: null, neckToWaist: null }, DEFAULT_STYLE);
    onTable(<IssueList issues={issues} />);
    expect(screen.getAllByRole('listitem')).toHaveLength(1);
    expect(screen.getByRole('listitem')).toHaveTextContent(
      'The draft needs bust girth; neck to waist, front.',
    );
    expect(screen.getByRole('link', { name: 'Go to the measurements' })).toHaveAttribute('href', '#measure');
  });

  it('counts what is to mend and to look at, and leads to where it is told', () => {
    const { issues } = draft(measurements, {
      ...DEFAULT_STYLE,
      hemBelow: 300,
      ease: { ...DEFAULT_STYLE.ease, waist: -60 },
      wedges: DEFAULT_STYLE.wedges.map((wedge) => ({ ...wedge, sizing: 'manual', intake: { waist: 140 } })),
    });
    onTable(<IssueList issues={issues} />);
    const of = (severity: string): number => issues.filter((issue) => issue.severity === severity).length;
    expect(of('error')).toBeGreaterThan(0);
    expect(of('warn')).toBeGreaterThan(0);
    expect(screen.getAllByRole('link').map((link) => [link.textContent, link.getAttribute('href')])).toEqual([
      [`${of('error')} to mend in the draft`, '#draft'],
      [`${of('warn')} to look at in the draft`, '#draft'],
    ]);
  });
});
