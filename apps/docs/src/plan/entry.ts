import { PlannerPage } from './planner-page.tsx';
import { sheetOf } from './work.ts';

const planner = document.getElementById('planner');
if (planner) {
  const page = new PlannerPage(sheetOf(JSON.parse(planner.dataset.plan ?? '')));
  page.openLink().then(() => {
    planner.dataset.ready = '';
  });
}
