// Outside figures: Table S3-1 of the guidelines of 1994 (the source `tuberculosis-guidelines-1994`, text seen as a
// copy): minutes to remove 90, 99 and 99.9 % of what is in the air. Every printed row is here.
const rows = `1 138 276 414
2 69 138 207
3 46 92 138
4 35 69 104
5 28 55 83
6 23 46 69
7 20 39 59
8 17 35 52
9 15 31 46
10 14 28 41
11 13 25 38
12 12 23 35
13 11 21 32
14 10 20 30
15 9 18 28
16 9 17 26
17 8 16 24
18 8 15 23
19 7 15 22
20 7 14 21
25 6 11 17
30 5 9 14
35 4 8 12
40 3 7 10
45 3 6 9
50 3 6 8`;

export const printedPurgeTimes = rows.split('\n').flatMap((row) => {
  const [airChangesPerHour = Number.NaN, ...minutes] = row.split(' ').map(Number);
  return minutes.map((printed, i) => ({ airChangesPerHour, remainingPct: [10, 1, 0.1][i] ?? 0, printed }));
});
