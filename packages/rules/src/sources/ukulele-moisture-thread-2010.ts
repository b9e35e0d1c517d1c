import type { Source } from '../citation.ts';

export const ukuleleMoistureThread2010: Source = {
  id: 'ukulele-moisture-thread-2010',
  title: 'Humidity and the moisture content of a guitar, topic 9160',
  author: 'members of a forum of ukulele players',
  year: 2010,
  url: 'http://www.taropatch.net/forum/topic.asp?TOPIC_ID=9160',
  note: 'Reads off a table that was not seen.',
};
