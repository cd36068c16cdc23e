/** Runs in an empty page of the browser: works out, apart from the page that is measured, what it is to show. */
import { costPicture } from '../../src/drawing/cost-picture';
import { pairsPicture } from '../../src/drawing/pairs-picture';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { demo } from '../../src/workbook/demo';
import { tableCells } from '../../src/workbook/table-cells';
import { type Edit, withEdit } from '../browser/pages/edit';

/** Labels of the two pictures in the pane's view of the run. */
export interface RunLabels {
  readonly pairs: string;
  readonly cost: string;
}

/** The labels for the demo, and after each of the edits one after the other. */
function labelsOf(edits: readonly Edit[]): readonly RunLabels[] {
  const workbooks = [demo];
  for (const edit of edits) workbooks.push(withEdit(workbooks[workbooks.length - 1] ?? demo, edit));
  return workbooks.map((workbook) => {
    const { plan, problems, money } = readPlan(planCells(new Map(Object.entries(tableCells(workbook)))));
    if (problems[0]) throw problems[0];
    return {
      pairs: pairsPicture({ runs: plan.runs.styles }, 100).label,
      cost: costPicture({ orders: plan.orders, money }, 100).label,
    };
  });
}

Object.assign(window, { labelsOf });
export type LabelsOf = typeof labelsOf;
