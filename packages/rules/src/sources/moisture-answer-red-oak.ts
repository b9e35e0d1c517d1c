import type { Source } from '../citation.ts';

export const moistureAnswerRedOak: Source = {
  id: 'moisture-answer-red-oak',
  title: 'Moisture content of a red oak specimen, quoted in a forum thread',
  author: 'Purdue University Cooperative Extension Service',
  identifier: 'FNR-156, as quoted',
  url: 'http://primitivearcher.com/smf/index.php/topic,1419.0/prev_next,next.html',
  note: 'Undated thread; it quotes the example of the extension bulletin, which itself was not seen.',
};
