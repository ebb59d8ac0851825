export const whatAJobIs = 1;
