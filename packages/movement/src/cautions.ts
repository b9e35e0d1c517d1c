/** Common practice, no source. */
export const boardsDiffer =
  'The figure is for an average board of the species. A single board can move noticeably more or less: leave more room than it says.';
