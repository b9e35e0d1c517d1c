// Outside check: "Theoretical Spreading Rates", the table of an undated data sheet, "Calculation/Conversion Chart", maker
// not named, seen as a copy, as text; ft²/gal. It says 1604 for a gallon at 1 mil, as `coverage-answer-2003` does. Every
// printed cell is here.
const solidsPct = [
  30, 35, 40, 45, 50, 55, 60, 65, 70, 72, 74, 76, 78, 80, 82, 84, 86, 88, 90, 92, 94, 96, 98, 100,
];
const printed: Record<number, string> = {
  1: '481 561 642 722 802 882 962 1043 1123 1155 1187 1219 1251 1283 1315 1347 1379 1412 1444 1476 1508 1540 1572 1604',
  2: '241 281 321 361 401 441 481 521 561 527 593 610 626 642 658 674 690 706 722 738 754 770 786 802',
  3: '160 187 214 241 267 294 321 348 374 385 396 406 417 428 438 449 460 471 481 492 503 513 524 535',
  4: '120 140 160 180 201 221 241 261 281 289 297 305 313 321 329 337 345 353 361 369 377 385 393 401',
  5: '96 112 128 144 160 176 192 209 225 231 237 244 250 257 263 269 276 282 289 295 302 308 314 321',
  6: '80 94 107 120 134 147 160 174 187 192 198 203 209 214 219 225 230 235 241 246 251 257 262 267',
  8: '60 70 80 90 100 110 120 130 140 144 148 152 156 160 164 168 172 176 180 184 188 192 196 201',
  10: '48 56 64 72 80 88 96 104 112 115 119 122 125 128 132 135 138 141 144 148 151 154 157 160',
};
/** Film in mils, solids in %, and ft² to the gallon, as printed. */
export const printedSpreadingRates = Object.entries(printed).flatMap(([mils, row]) =>
  row
    .split(' ')
    .map((ft2PerGal, i) => [Number(mils), solidsPct[i] ?? Number.NaN, Number(ft2PerGal)] as const),
);
