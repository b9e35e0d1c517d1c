export const G_PER_LB = 453.592_37;
export const ML_PER_GAL = 3785.411_784;

/** g/L in one pound to the US gallon: 453.592 37 g / 3.785 411 784 L. */
export const LB_PER_GAL = 119.82642731689663;
