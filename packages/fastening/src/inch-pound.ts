/** Exact: what one unit of inches and pounds is in ours, for equations that their source states in them. */
export const MM_PER_IN = 25.4;
export const N_PER_LBF = 4.448_221_615_260_5;
export const MPA_PER_PSI = 0.006_894_757_293_168_361;

/** A figure that its source prints in pounds, for the examples of cards. */
export const inPounds = (printed: string) => ({ printed, unit: 'lb', times: N_PER_LBF });

/** A figure that its source prints in psi. */
export const inPsi = (printed: string) => ({ printed, unit: 'psi', times: MPA_PER_PSI });
