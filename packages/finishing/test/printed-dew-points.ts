// Outside figures: the dew-point table and the dew-point chart for painters (the sources `dew-point-table` and
// `dew-point-chart`, text seen). Every printed cell is here.

/** A printed cell: air, humidity and the figure. */
export interface PrintedDewPoint {
  readonly air: number;
  readonly humidityPct: number;
  readonly printed: number;
}

const airC = [2, 4, 6, 8, 10, 12, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 28, 30];

/** By humidity, from the coldest air that has a cell to 30 °C. */
const columnsC: Record<number, string> = {
  20: '0.5 1.3 3.0 4.6',
  25: '3.6 4.5 6.1 7.8',
  30: '-6.0 -4.5 -2.9 -2.2 -1.4 -0.6 0.2 1.1 1.9 2.8 3.7 4.5 5.4 6.2 7.1 8.8 10.5',
  35: '-4.2 -2.6 -1.0 -0.3 0.5 1.4 2.3 3.2 4.1 5.0 5.9 6.7 7.6 8.5 9.4 11.1 12.9',
  40: '-2.6 -1.0 0.6 1.5 2.4 3.3 4.2 5.1 6.0 6.9 7.8 8.7 9.6 10.5 11.4 13.1 14.9',
  45: '-7.7 -6.1 -4.5 -2.7 -1.3 0.4 2.2 3.1 4.1 5.0 5.9 6.8 7.7 8.6 9.5 10.4 11.3 12.2 13.2 15.0 16.8',
  50: '-6.6 -4.9 -3.1 -1.6 0.0 1.8 3.7 4.7 5.6 6.5 7.4 8.3 9.3 10.2 11.2 12.0 12.9 13.8 14.8 16.6 18.4',
  55: '-5.4 -3.7 -2.1 -0.4 1.3 3.2 5.1 6.1 7.0 7.9 8.8 9.8 10.7 11.6 12.5 13.5 14.4 15.4 16.3 18.1 20.0',
  60: '-4.4 -2.6 -1.1 0.7 2.5 4.5 6.4 7.4 8.3 9.2 10.1 11.1 12.0 12.9 13.9 14.8 15.7 16.7 17.7 19.4 21.4',
  65: '-3.2 -1.8 -0.1 1.8 3.7 5.6 7.6 8.5 9.5 10.4 11.3 12.3 13.2 14.2 15.2 16.0 17.0 18.0 18.9 20.9 23.7',
  70: '-2.5 -0.9 0.9 2.8 4.8 6.7 8.7 9.6 10.6 11.5 12.4 13.4 14.4 15.4 16.3 17.3 18.2 19.1 20.1 22.0 23.9',
  75: '-1.8 0.1 1.9 3.8 5.8 7.8 9.7 10.7 11.7 12.5 13.5 14.5 15.5 16.4 17.4 18.4 19.2 20.2 21.3 23.2 25.1',
  80: '-1.0 0.8 2.7 4.8 6.8 8.7 10.7 11.7 12.7 13.6 14.6 15.5 16.5 17.4 18.4 19.4 20.3 21.4 22.3 24.2 26.1',
  85: '-0.3 1.6 3.6 5.7 7.7 9.6 11.6 12.6 13.6 14.5 15.4 16.4 17.4 18.4 19.4 20.4 21.4 22.3 23.3 25.3 27.2',
  90: '0.5 2.4 4.5 6.5 8.5 10.5 12.6 13.5 14.6 15.4 16.3 17.4 18.4 19.3 20.3 21.3 22.3 23.3 24.3 26.2 28.2',
  95: '1.2 3.2 5.4 7.3 9.3 11.3 13.4 14.4 15.5 16.2 17.3 18.2 19.2 20.2 21.2 22.2 23.2 24.2 25.2 27.2 29.1',
};

/** The table: °C. */
export const printedDewPointsC: readonly PrintedDewPoint[] = Object.entries(columnsC).flatMap(
  ([humidityPct, column]) => {
    const figures = column.split(' ').map(Number);
    const airs = airC.slice(-figures.length);
    return figures.map((printed, i) => ({
      air: airs[i] ?? Number.NaN,
      humidityPct: Number(humidityPct),
      printed,
    }));
  },
);

const airF = [20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120];

const rowsF: Record<number, string> = {
  90: '18 28 37 47 57 67 77 87 97 107 117',
  85: '17 26 36 45 55 65 75 84 95 104 113',
  80: '16 25 34 44 54 63 73 82 93 102 110',
  75: '15 24 33 42 52 62 71 80 91 100 108',
  70: '13 22 31 40 50 60 68 78 88 96 105',
  65: '12 20 29 38 47 57 66 76 85 93 103',
  60: '11 19 27 36 45 55 64 73 83 92 101',
  55: '9 17 25 34 43 53 61 70 80 89 98',
  50: '6 15 23 31 40 50 59 67 77 86 94',
  45: '4 13 21 29 37 47 56 64 73 82 91',
  40: '1 11 18 26 35 43 52 61 69 78 87',
  35: '-2 8 16 23 31 40 48 57 65 74 83',
  30: '-6 4 13 20 28 36 44 52 61 69 77',
};

/** The chart: whole °F. */
export const printedDewPointsF: readonly PrintedDewPoint[] = Object.entries(rowsF).flatMap(
  ([humidityPct, row]) =>
    row.split(' ').map((printed, i) => ({
      air: airF[i] ?? Number.NaN,
      humidityPct: Number(humidityPct),
      printed: Number(printed),
    })),
);
