/** Exponent of the Magnus formula over water, with the coefficients of WMO-No. 8. */
export const magnusExponent = (temperatureC: number): number =>
  (17.62 * temperatureC) / (243.12 + temperatureC);
