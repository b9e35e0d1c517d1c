/** g/L in one pound to the US gallon: 453.592 37 g / 3.785 411 784 L. */
export const LB_PER_GAL = 119.82642731689663;
