import type { Source } from '../citation.ts';

export const texasCoatingRule: Source = {
  id: 'texas-coating-rule',
  title: 'Figure: 30 TAC §115.423(1)',
  author: 'Texas Commission on Environmental Quality',
  identifier: '30 TAC 115.423(1)',
  url: 'https://texreg.sos.state.tx.us/fids/30_0115_0423-3.html',
  note: 'Undated figure of the Texas Register.',
};
