/** How many of a number's values over the worlds an answer gives; each stands for as large a share of them. */
export const TWENTIETHS = 20;
